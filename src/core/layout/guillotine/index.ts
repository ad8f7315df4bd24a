export {
  type Build,
  type BuiltRectangle,
  constrainedGuillotine,
  type GuillotineCut,
  type LimitedKind,
} from './constrained';
export { type RectangleKind, unconstrainedGuillotine, type ValueTable } from './unconstrained';
