import { factorBand, substituteBand } from './band';
import { splineWeights } from './splineAt';
import type { SplineGrid } from './splineGrid';
import { plateStencil } from './stencil';
import { diagonalOf, stencilBand } from './stencilBand';
import type { BendingStiffness } from './stiffness';

/** Each point holds this many times as stiffly as a cell of the plate resists, so that the plate gives way, not it. */
const STIFFER = 1e4;
/** Of what the points hold too little a round leaves 1/STIFFER, or so. */
const ROUNDS = 2;
/** Holds a plate that too few points hold, by next to nothing. */
const FLOATING = 1e-9;

/**
 * What holds a free plate at points: from the heights that it is held at, mm, the forces on it there, N, in the direction of
 * the heights. Between the points it takes the shape of least bending energy. The forces and their moments add up to
 * nothing. A plate's heights at points determine its shape only where three of them do not lie in a line; elsewhere nothing
 * has to be held.
 *
 * Least energy under point constraints by augmented Lagrangians (Hestenes 1969; Powell 1969): (K + μ PᵀP) w = Pᵀ(f + μ d),
 * then f ← f + μ (d − P w).
 * @param points places, mm
 */
export function heldAt(
  grid: SplineGrid,
  stiffness: BendingStiffness,
  points: readonly { u: number; v: number }[],
): (heights: ArrayLike<number>) => Float64Array {
  const stencil = plateStencil(grid, stiffness);
  const most = diagonalOf(stencil).reduce((largest, value) => Math.max(largest, value), 0);
  const hold = STIFFER * most;
  const weights = points.map(({ u, v }) => splineWeights(grid, u, v));
  const band = stencilBand(stencil);
  const { rows, band: width, size: count } = band;
  for (let k = 0; k < count; k++) rows[k * (width + 1) + width]! += FLOATING * most;
  for (const { at, weight } of weights) {
    at.forEach((k, s) => {
      for (let t = 0; t <= s; t++) rows[k * (width + 1) + width + at[t]! - k]! += hold * weight[s]! * weight[t]!;
    });
  }
  if (!factorBand(band)) throw new Error('a plate that is held at points has no least energy');
  return (heights) => {
    const forces = new Float64Array(points.length);
    for (let round = 0; round < ROUNDS; round++) {
      const right = new Float64Array(count);
      weights.forEach(({ at, weight }, point) => {
        const load = forces[point]! + hold * heights[point]!;
        at.forEach((k, s) => {
          right[k]! += weight[s]! * load;
        });
      });
      substituteBand(band, right);
      weights.forEach(({ at, weight }, point) => {
        const height = at.reduce((sum, k, s) => sum + weight[s]! * right[k]!, 0);
        forces[point]! += hold * (heights[point]! - height);
      });
    }
    return forces;
  };
}
