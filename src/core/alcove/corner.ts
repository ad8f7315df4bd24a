import { constant, type Dual, fixedValue, hypotenuse, impliedPoint, subtract } from '../dual';
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
  const { back, [side]: wall } = alcove;
  const solution = fixedValue((x) => wall.value(back.value(x, height), height), wall.value(0, height));
  const onBack = back.at(constant(solution), y);
  const direct = wall.at(onBack, y).gradient;
  if (direct === null) return { x: constant(solution), y, z: onBack };
  const slope = wall.gradient(onBack.value, height)[0] * back.gradient(solution, height)[0];
  const x = impliedPoint(solution, direct, slope);
  return { x, y, z: back.at(x, y) };
}

/** Straight distance between two places, mm. */
export function distance(p: Place, q: Place): Dual {
  return hypotenuse(hypotenuse(subtract(p.x, q.x), subtract(p.y, q.y)), subtract(p.z, q.z));
}
