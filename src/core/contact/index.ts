export { type SurfacePoint, surfaceOf } from './evaluate';
export { type Pressed, pressSheet } from './press';
export { heightOf, type Plane, restingPlane, restOn, type Sample } from './restingPlane';
export { type SplineGrid, splineGrid } from './splineGrid';
export { type BendingStiffness, bendingStiffness, isotropic, type SheetMaterial } from './stiffness';
