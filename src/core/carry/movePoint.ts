import type { Vec3 } from '../piece';
import type { Pose } from './report';

/** Of each axis the two coordinates that turning about it changes, from the first to the second. */
export const PLANES = { x: [1, 2], y: [0, 2], z: [1, 0] } as const;

/**
 * Where a point of a panel in its final place is at a pose, mm. A bow is drawn as the parabola of its sagitta.
 * @param middle of the panel and its half width along x, for the bow
 */
export function movePoint(
  { axis, pivot, angle, shift, bow }: Pose,
  point: Readonly<Vec3>,
  middle: number,
  half: number,
): Vec3 {
  const moved: Vec3 = [...point];
  if (bow.sagitta > 0) {
    const along = (point[0] - middle) / half;
    moved[0] = middle + (point[0] - middle) * (1 - bow.shortening / (2 * half));
    moved[2] += bow.sagitta * (1 - along * along);
  }
  const [first, second] = PLANES[axis];
  const [a, b] = [moved[first] - pivot[first], moved[second] - pivot[second]];
  const turn = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  moved[first] = pivot[first] + a * cos - b * sin;
  moved[second] = pivot[second] + a * sin + b * cos;
  return [moved[0] + shift[0], moved[1] + shift[1], moved[2] + shift[2]];
}
