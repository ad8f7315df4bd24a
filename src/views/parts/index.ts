export { Callout, type Weight } from './Callout';
export { Card } from './Card';
export { ChoiceField, type ChoiceFieldProps } from './ChoiceField';
export { ChevronDown, Cross, Minus, More, Plus, Redo, Swap, Tick, Undo } from './icons';
export { NumberField } from './NumberField';
export { Segments } from './Segments';
export { SidedField } from './SidedField';
export { Switch } from './Switch';
export { type Lengths, lengthsIn, useLengths } from './useLengths';
