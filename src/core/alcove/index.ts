export type { Alcove } from './alcove';
export { distance, insideCorner, type Place } from './corner';
export {
  type AlcoveModel,
  alcoveModel,
  type Parameter,
  type Part,
  type SurfacePiece,
  type Unevenness,
  unevenBasis,
} from './model';
export { type Beyond, restrained } from './restrained';
export { towardsRoom } from './towardsRoom';
export { valuesOnly } from './valuesOnly';
