import { chain, constant, type Dual } from '../dual';
import type { Rim } from '../job-file';

/**
 * Rise of the rim's contour over the rim's plane at distance z from the back wall, mm: linear between the points of
 * `rim.profile`, whose last point lies at the apron's face z = rim.width; level before the first and after the last.
 */
export function contourRise({ profile, width }: Rim, z: Dual): Dual {
  const last = profile.at(-1);
  if (last === undefined) return constant(0);
  const outward = z.value - (width - last[0]);
  if (outward <= profile[0]![0]) return constant(profile[0]![1]);
  for (let k = 1; k < profile.length; k++) {
    const [from, low] = profile[k - 1]!;
    const [to, high] = profile[k]!;
    if (outward > to) continue;
    const slope = (high - low) / (to - from);
    return chain(low + slope * (outward - from), slope, z);
  }
  return constant(last[1]);
}

/** Distances from the back wall at which the rim's contour turns, ascending, mm. */
export function contourKinks({ profile, width }: Rim): number[] {
  const last = profile.at(-1);
  return last === undefined ? [] : profile.map(([outward]) => width - last[0] + outward);
}
