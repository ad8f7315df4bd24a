import type { Matrix } from 'ml-matrix';
import { MM_PER_INCH } from '../length';
import type { CutEdgeMove, CutEdgePlace } from './report';

/** A place on a cut edge with the derivatives of its position with respect to the model's parameters. */
export interface CutEdge {
  place: CutEdgePlace;
  gradient: Float64Array;
}

/** A cut edge with its covariance with every unknown, length n. */
export interface Response {
  place: CutEdgePlace;
  influence: Float64Array;
  variance: number;
}

/** @param cofactors of all unknowns, standoffs included */
export function responsesOf(edges: readonly CutEdge[], cofactors: Matrix): Response[] {
  const rows = cofactors.to2DArray();
  return edges.map(({ place, gradient }) => {
    const influence = Float64Array.from(rows, (row) => product(row, gradient));
    return { place, influence, variance: product(gradient, influence) };
  });
}

/** The cut edge that moves most when the whitened misfits of some rows change by so much. */
export function largestMove(
  responses: readonly Response[],
  rows: readonly Float64Array[],
  changes: readonly number[],
): CutEdgeMove | null {
  let largest: { place: CutEdgePlace; by: number } | null = null;
  for (const { place, influence } of responses) {
    const by = rows.reduce((sum, row, k) => sum + product(influence, row) * changes[k]!, 0);
    if (largest === null || Math.abs(by) > Math.abs(largest.by)) largest = { place, by };
  }
  return largest && { ...largest.place, by: largest.by, by32nds: (largest.by * 32) / MM_PER_INCH };
}

/** Sum over the shorter of the two: rows of the Jacobian go on with standoffs. */
export function product(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = Math.min(a.length, b.length) - 1; i >= 0; i--) sum += a[i]! * b[i]!;
  return sum;
}
