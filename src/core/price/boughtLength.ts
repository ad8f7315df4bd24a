import type { Job } from '../job-file';
import { barsFor } from '../materials';
import type { Piece } from '../piece';

/**
 * Length of trim to buy in whole stock lengths, mm, while the exact plan of `planStock` is not there: the longest piece
 * first into the first bar that holds it (first fit decreasing), from each of the listed lengths alone, and the least of
 * those. What no listed length holds is counted as long as it is.
 */
export function boughtLength({ trim, cutting }: Job, pieces: readonly Piece[]): number {
  const cuts = pieces.map(({ size }) => size.along + trim.allowance);
  const longest = Math.max(...trim.stock.map(({ length }) => length));
  const tooLong = cuts.filter((cut) => cut > longest).reduce((sum, cut) => sum + cut, 0);
  const fitting = cuts.filter((cut) => cut <= longest);
  const sawn = fitting.map((cut) => cut + cutting.kerf);
  const bought = trim.stock
    .filter(({ length }) => fitting.every((cut) => cut <= length))
    .map(({ length }) => length * barsFor(sawn, length + cutting.kerf));
  return tooLong + Math.min(...bought);
}
