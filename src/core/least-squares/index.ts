export { cholesky, solveLower, solveLowerTransposed, whitenedRows } from './cholesky';
export { type Evaluation, type LeastSquaresProblem, withoutRows } from './problem';
export { residualsAt } from './residualsAt';
export {
  type LeastSquaresOptions,
  type LeastSquaresOutcome,
  type LeastSquaresSolution,
  solveLeastSquares,
} from './solve';
