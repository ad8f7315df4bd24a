export { type SurfacePoint, surfaceOf } from './evaluate';
export { followFloor } from './follow';
export { type Gripped, gripSheet } from './grip';
export { heldAt } from './heldAt';
export { isRigid, type Pressed, pressSheet } from './press';
export {
  heightOf,
  type Plane,
  planeThrough,
  restingPlane,
  type Sample,
  type Supports,
  supportsOn,
} from './restingPlane';
export { type SplineSum, splineAt } from './splineAt';
export { centreOf, coefficientsOf, type SplineGrid, splineGrid } from './splineGrid';
export { areasOf } from './stencil';
export { type BendingStiffness, bendingStiffness, isotropic, orthotropic, type SheetMaterial } from './stiffness';
