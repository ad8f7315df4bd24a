import { RADIANS_PER_DEGREE } from '../length';
import type { Section } from './section';
import { type FirstEnd, type Sweep, sweep } from './sweep';

/** A way in with one end first. */
export interface Tilt {
  first: FirstEnd;
  /** radians */
  angle: number;
  way: Sweep;
}

/** Angles tried, degrees: the smallest that does is looked for between two of them. */
const ANGLES = [1, 2, 3, 4, 6, 8, 11, 15, 20, 26, 33, 41, 50, 60, 70, 80];
const HALVINGS = 5;
const ENDS: readonly FirstEnd[] = ['low', 'high'];
/** Share of the clearance that the sheet has in its place which a way in is to leave. */
const ENOUGH = 0.9;

/**
 * The least tilt, either end first, that brings a rigid sheet in with nearly the clearance it has in its place; where
 * none does, the tilt that leaves most.
 * @param home clearance in its place, mm
 */
export function findTilt(sections: readonly Section[], thickness: number, home: number, reach: number): Tilt {
  const wanted = ENOUGH * Math.max(home, 0);
  const tilt = (first: FirstEnd, angle: number, least?: number): Tilt => ({
    first,
    angle,
    way: sweep(sections, thickness, angle, first, reach, least),
  });
  let before = 0;
  for (const degrees of ANGLES) {
    const angle = degrees * RADIANS_PER_DEGREE;
    for (const first of ENDS) {
      const here = tilt(first, angle, wanted);
      if (here.way.clearance >= wanted) {
        return narrowed((smaller) => tilt(first, smaller, wanted), before, here, wanted);
      }
    }
    before = angle;
  }
  return ANGLES.flatMap((degrees) => ENDS.map((first) => tilt(first, degrees * RADIANS_PER_DEGREE))).reduce((a, b) =>
    b.way.clearance > a.way.clearance ? b : a,
  );
}

/** Halves the stretch between an angle that leaves too little and one that leaves enough. */
function narrowed(at: (angle: number) => Tilt, tooLittle: number, enough: Tilt, wanted: number): Tilt {
  let [low, found] = [tooLittle, enough];
  for (let step = 0; step < HALVINGS; step++) {
    const here = at((low + found.angle) / 2);
    if (here.way.clearance >= wanted) found = here;
    else low = here.angle;
  }
  return found;
}
