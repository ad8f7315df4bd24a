export { Callout, type Weight } from './Callout';
export { Card } from './Card';
export { ChoiceField, type ChoiceFieldProps } from './ChoiceField';
export { DateField } from './DateField';
export { Download, type FileMade } from './Download';
export { GuideLink } from './GuideLink';
export { canTakeFocus, handFocusOn } from './handFocusOn';
export {
  ArrowLeft,
  ArrowRight,
  Attention,
  ChevronDown,
  ChevronRight,
  ChevronUp,
  Cross,
  Keyboard,
  Minus,
  More,
  Plus,
  Question,
  Redo,
  Rubout,
  Tick,
  Undo,
  Warning,
  Wave,
} from './icons';
export { loaded, loadedSoon } from './loaded';
export { MenuContent, MenuItem } from './Menu';
export { NumberField } from './NumberField';
export { PartBoundary } from './PartBoundary';
export { PartTabs } from './PartTabs';
export { RemoveButton } from './RemoveButton';
export { Segments } from './Segments';
export { SidedField } from './SidedField';
export { Switch } from './Switch';
export { type Lengths, lengthsIn, useLengths } from './useLengths';
export { useMaking } from './useMaking';
export { useTouched } from './useTouched';
