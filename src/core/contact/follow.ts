import { factorBand, substituteBand } from './band';
import type { SplineGrid } from './splineGrid';
import { plateStencil, times } from './stencil';
import { diagonalOf, stencilBand } from './stencilBand';
import type { BendingStiffness } from './stiffness';

/** Share of the mean diagonal that is added, so that a sheet touching in fewer than three places still has an answer. */
const TIE = 1e-9;

/**
 * How the whole sheet moves when what holds it up moves, the contact staying as it is: to first order its free splines
 * find their balance anew, A_ff dx_f = −A_fh dx_h. One factor of the band for all moves.
 * @param held splines that lie on the floor
 * @returns takes the move of every spline's floor, mm, to the move of every spline, mm
 */
export function followFloor(
  grid: SplineGrid,
  stiffness: BendingStiffness,
  held: Uint8Array,
): (floorMove: Float64Array) => Float64Array {
  const stencil = plateStencil(grid, stiffness);
  const diagonal = diagonalOf(stencil);
  const size = diagonal.length;
  const tie = (TIE * diagonal.reduce((sum, value) => sum + value, 0)) / size;
  const matrix = stencilBand(stencil, held);
  const { rows, band } = matrix;
  for (let k = 0; k < size; k++) rows[k * (band + 1) + band] = held[k] ? 1 : diagonal[k]! + tie;
  factorBand(matrix);
  return (floorMove) => {
    const ofHeld = floorMove.map((move, k) => (held[k] ? move : 0));
    const x = times(stencil, ofHeld, new Float64Array(size));
    for (let k = 0; k < size; k++) x[k] = held[k] ? floorMove[k]! : -x[k]!;
    substituteBand(matrix, x);
    return x;
  };
}
