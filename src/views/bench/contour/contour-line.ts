import type { Point, Rim } from '../../../core';

/**
 * The contour as one line in the section square to the apron: points [outward, up] in mm from the rim's plane at the
 * apron's outer face, from where the rim leaves its plane down to the floor.
 */
export function contourLine({ profile, apron, apronHeight }: Rim): Point[] {
  const reach = profile.at(-1)?.[0] ?? 0;
  const rolling = profile.map(([outward, rise]): Point => [outward - reach, rise]);
  const edge: Point = rolling.at(-1) ?? [0, 0];
  const down = apron.filter(([, rise]) => rise > -apronHeight).map(([outward, rise]): Point => [outward, rise]);
  const last = down.at(-1) ?? edge;
  return [...(rolling.length > 0 ? rolling : [edge]), ...down, [last[0], Math.min(last[1], -apronHeight)]];
}
