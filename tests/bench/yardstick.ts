import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import type { Row } from './bench';
import { timeTogether } from './time';

const SIZE = 200;
const WHAT = `Cholesky factor of ${SIZE} × ${SIZE} by ml-matrix`;

/**
 * Milliseconds that one plain calculation of a package takes at the moment. What has no reference of its own is put
 * against it, so that kept figures of different machines can be compared.
 */
export function measureYardstick(): number {
  const spread = Matrix.from1DArray(
    SIZE,
    SIZE,
    Array.from({ length: SIZE * SIZE }, (_, k) => Math.sin(k)),
  );
  const definite = spread.mmul(spread.transpose()).add(Matrix.eye(SIZE, SIZE, SIZE));
  return timeTogether({ factor: () => new CholeskyDecomposition(definite) }, { rounds: 9 }).factor;
}

/** The rows, those in ms without a reference put against the yardstick. */
export const againstYardstick = (rows: readonly Row[], yardstickMs: number): Row[] =>
  rows.map((row) =>
    row.unit === 'ms' && !row.against ? { ...row, against: { what: WHAT, value: yardstickMs } } : row,
  );
