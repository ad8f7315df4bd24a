export type { Column, LinearModel, LinearSolution, SolveLinear } from './linearModel';
export { solveStock } from './solveStock';
export type { Demand, Pattern, StockLength, StockProblem, StockSolution } from './stockProblem';
