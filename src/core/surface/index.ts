export { anchoredBasis, type Basis } from './basis';
export { basisSurface } from './basisSurface';
export { type Monomial, polynomialBasis } from './polynomial';
export { type Stretch, splineBasis } from './spline';
export { sumSurface } from './sumSurface';
export type { Surface } from './surface';
