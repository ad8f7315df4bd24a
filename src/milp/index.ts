export { highsSolver, type SolverLimits } from './highsSolver';
