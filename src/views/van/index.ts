export { Lengths } from './Lengths';
export { Sheets } from './Sheets';
export { useStockPlan } from './use-stock-plan';
export { Van } from './Van';
