import { type Dual, subtract } from '../dual';
import type { Angle } from '../piece';

const DEGREES = 180 / Math.PI;

/**
 * Angle of a cut whose two ends lie `over` mm apart square to the strip and `run` mm apart along it, with the
 * uncertainty of the two ends.
 */
export function cutAngle(run: number, over: number, [a, b]: readonly [Dual, Dual], sd: (q: Dual) => number): Angle {
  const share = 1 + (run / over) ** 2;
  return {
    degrees: Math.atan2(run, over) * DEGREES,
    sd: (sd(subtract(a, b)) / over / share) * DEGREES,
  };
}

export const SQUARE: Angle = { degrees: 0, sd: 0 };
