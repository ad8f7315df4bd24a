import type { Point } from '../../../core';

/** A place on a picture, px to the right and down. */
export type Pixel = readonly [x: number, y: number];

/**
 * A contour tapped on a picture, in mm: outward and up along a rule that was held plumb.
 * @param rule its upper and lower end on the picture
 * @param ruleLength between these ends, mm
 * @returns null where the ends of the rule fall together
 */
export function tracedLine(taps: readonly Pixel[], rule: readonly [Pixel, Pixel], ruleLength: number): Point[] | null {
  const [upper, lower] = rule;
  const [dx, dy] = [upper[0] - lower[0], upper[1] - lower[1]];
  const length = Math.hypot(dx, dy);
  const [first] = taps;
  if (length === 0 || first === undefined) return null;
  const [ux, uy] = [dx / length, dy / length];
  const line = taps.map(([x, y]): Point => {
    const [px, py] = [x - first[0], y - first[1]];
    return [((-uy * px + ux * py) * ruleLength) / length, ((ux * px + uy * py) * ruleLength) / length];
  });
  const farthest = line.reduce((most, [out]) => (Math.abs(out) > Math.abs(most) ? out : most), 0);
  return farthest < 0 ? line.map(([out, up]): Point => [-out, up]) : line;
}
