export {
  type LeastSquaresOptions,
  type LeastSquaresOutcome,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  solveLeastSquares,
} from './solve';
