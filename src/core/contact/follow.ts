import { emptyBand, factorBand, substituteBand } from './band';
import type { SplineGrid } from './splineGrid';
import { plateStencil } from './stencil';
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
  const { across, up } = grid;
  const size = across * up;
  const { entries } = plateStencil(grid, stiffness);
  const band = 2 * across + 2;
  const width = band + 1;
  const matrix = emptyBand(size, band);
  const { rows } = matrix;
  const tie = (TIE * entries.reduce((sum, value, e) => (e % 25 === 12 ? sum + value : sum), 0)) / size;
  const neighbours = (k: number, visit: (column: number, entry: number) => void): void => {
    for (let e = 0; e < 25; e++) {
      const entry = entries[k * 25 + e] as number;
      if (entry !== 0) visit(k + (e % 5) - 2 + (Math.floor(e / 5) - 2) * across, entry);
    }
  };
  for (let k = 0; k < size; k++) {
    if (held[k]) rows[k * width + band] = 1;
    else {
      neighbours(k, (column, entry) => {
        if (column <= k && !held[column]) rows[k * width + band + column - k] = entry;
      });
      rows[k * width + band] = (rows[k * width + band] as number) + tie;
    }
  }
  factorBand(matrix);
  return (floorMove) => {
    const x = new Float64Array(size);
    for (let k = 0; k < size; k++) {
      if (held[k]) x[k] = floorMove[k] as number;
      else {
        neighbours(k, (column, entry) => {
          if (held[column]) x[k] = (x[k] as number) - entry * (floorMove[column] as number);
        });
      }
    }
    substituteBand(matrix, x);
    return x;
  };
}
