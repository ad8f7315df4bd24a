export { Lengths } from './Lengths';
export { Sheets } from './Sheets';
export { useStockPlan, withLengthsPlanned } from './use-stock-plan';
export { Van } from './Van';
