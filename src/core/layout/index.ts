export { planStock, type StockBar, type StockPlan } from './planStock';
export { type PlacedPiece, planSheets, type Rectangle, type SheetInUse, type SheetLayout } from './sheets';
export type { Column, LinearModel, LinearSolution, SolveLinear } from './stock';
