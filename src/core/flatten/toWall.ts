import type { FlatMap } from './flatMap';

const MOST_STEPS = 60;
const SETTLED = 1e-10;

/**
 * The inverse of a flat map: wall coordinates of a point of the sheet, both mm. The map differs from the identity by the
 * squares of the wall's slopes, so stepping by what is missing gains a decimal digit or more a step on any wall that a
 * panel can be put on.
 */
export function toWall({ toSheet }: Pick<FlatMap, 'toSheet'>, x: number, y: number): [u: number, v: number] {
  let [u, v] = [x, y];
  for (let step = 0; step < MOST_STEPS; step++) {
    const [sheetX, sheetY] = toSheet(u, v);
    const [missingX, missingY] = [x - sheetX, y - sheetY];
    u += missingX;
    v += missingY;
    if (Math.abs(missingX) + Math.abs(missingY) < SETTLED) break;
  }
  return [u, v];
}
