import { fixedValue } from '../dual';
import type { EdgeAt } from './clearance';
import type { Point } from './panel';

/** Where two crossing edges meet: u = side(v), v = level(u). */
export function meet(side: EdgeAt, level: EdgeAt, startHeight: number): Point {
  const v = fixedValue((height) => level(side(height).value).value, startHeight);
  return [side(v).value, v];
}
