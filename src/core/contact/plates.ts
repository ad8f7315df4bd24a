import { type SplineGrid, stackOf } from './splineGrid';
import { areasOf, plateStencil, type Stencil } from './stencil';
import type { BendingStiffness } from './stiffness';

/** A free plate on a grid. */
export interface Plate {
  grid: SplineGrid;
  /** N/mm */
  matrix: Stencil;
  /** ∫∫ of each spline, mm² */
  areas: Float64Array;
}

/** The same plate on a grid and on all coarser ones, finest first. */
export const platesOn = (grid: SplineGrid, stiffness: BendingStiffness): Plate[] =>
  stackOf(grid).map((each) => ({ grid: each, matrix: plateStencil(each, stiffness), areas: areasOf(each) }));
