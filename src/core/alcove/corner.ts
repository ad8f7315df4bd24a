import { constant, type Dual, fixedPoint, hypotenuse, subtract } from '../dual';
import type { Side } from '../job-file';
import type { Alcove } from './alcove';

/** A point in the alcove's frame, mm. */
export interface Place {
  x: Dual;
  y: Dual;
  z: Dual;
}

/** The inside corner between the back wall and a side wall at height y: xc = side(back(xc, y), y). */
export function insideCorner(alcove: Alcove, side: Side, height: number): Place {
  const y = constant(height);
  const x = fixedPoint((x) => alcove[side].at(alcove.back.at(x, y), y), alcove[side].value(0, height));
  return { x, y, z: alcove.back.at(x, y) };
}

/** Straight distance between two places, mm. */
export function distance(p: Place, q: Place): Dual {
  return hypotenuse(hypotenuse(subtract(p.x, q.x), subtract(p.y, q.y)), subtract(p.z, q.z));
}
