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
  const rows = new Float64Array(size * width);
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
  factor(rows, size, band);
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
    substitute(rows, size, band, x);
    return x;
  };
}

/** Cholesky factor L of a band matrix in place; row k holds columns k − band … k. Golub and Van Loan, 4.3.5. */
function factor(rows: Float64Array, size: number, band: number): void {
  const width = band + 1;
  for (let i = 0; i < size; i++) {
    const first = Math.max(0, i - band);
    for (let j = first; j <= i; j++) {
      const from = Math.max(first, j - band);
      let sum = rows[i * width + band + j - i] as number;
      const [a, b] = [i * width + band - i, j * width + band - j];
      for (let k = from; k < j; k++) sum -= (rows[a + k] as number) * (rows[b + k] as number);
      rows[i * width + band + j - i] =
        i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / (rows[j * width + band] as number);
    }
  }
}

function substitute(rows: Float64Array, size: number, band: number, x: Float64Array): void {
  const width = band + 1;
  for (let i = 0; i < size; i++) {
    const at = i * width + band - i;
    let sum = x[i] as number;
    for (let k = Math.max(0, i - band); k < i; k++) sum -= (rows[at + k] as number) * (x[k] as number);
    x[i] = sum / (rows[at + i] as number);
  }
  for (let i = size - 1; i >= 0; i--) {
    const at = i * width + band - i;
    const value = (x[i] as number) / (rows[at + i] as number);
    x[i] = value;
    for (let k = Math.max(0, i - band); k < i; k++) x[k] = (x[k] as number) - (rows[at + k] as number) * value;
  }
}
