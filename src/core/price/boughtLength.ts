import type { Job } from '../job-file';
import type { Piece } from '../piece';

/**
 * Length of trim to buy in whole stock lengths, mm, while the exact plan of `planStock` is not there: the longest piece
 * first into the first bar that holds it (first fit decreasing), from each of the listed lengths alone, and the least of
 * those. What no listed length holds is counted as long as it is.
 */
export function boughtLength({ trim, cutting }: Job, pieces: readonly Piece[]): number {
  const cuts = pieces.map(({ size }) => size.along + trim.allowance).sort((a, b) => b - a);
  const longest = Math.max(...trim.stock.map(({ length }) => length));
  const tooLong = cuts.filter((cut) => cut > longest).reduce((sum, cut) => sum + cut, 0);
  const fitting = cuts.filter((cut) => cut <= longest);
  const bought = trim.stock
    .filter(({ length }) => fitting.every((cut) => cut <= length))
    .map(({ length }) => length * barsFor(fitting, length, cutting.kerf));
  return tooLong + Math.min(...bought);
}

function barsFor(cuts: readonly number[], length: number, kerf: number): number {
  const left: number[] = [];
  for (const cut of cuts) {
    const bar = left.findIndex((rest) => rest >= cut + kerf);
    if (bar < 0) left.push(length - cut);
    else left[bar] = left[bar]! - cut - kerf;
  }
  return left.length;
}
