export { type Monomial, polynomialSurface } from './polynomial';
export type { Surface } from './surface';
