export { type Misreading, recogniseSlip } from './recogniseSlip';
export type { Slip, SlipKind } from './slip';
