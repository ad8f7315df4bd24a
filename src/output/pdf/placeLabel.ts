import type { Point } from '../../core';
import { clipStroke, grown, type Rectangle } from '../drawing';

export interface LabelWish {
  anchor: Point;
  /** clear distance from the anchor, mm */
  reach: number;
  /** unit vector to the side that the label should lie on */
  toward: Point;
  width: number;
  height: number;
  /** font size, mm: the scale that distances are judged on */
  size: number;
}

export interface LabelGround {
  /** labels stay inside */
  inside: Rectangle;
  /** lines better not crossed */
  strokes: [Point, Point][];
  /** areas better not covered */
  areas: Rectangle[];
  /** labels placed before */
  taken: Rectangle[];
}

/** Tries places round the anchor, nearer ones and the wished side first, and takes the one that hits least. */
export function placeLabel(
  { anchor: [x, y], reach, toward, width, height, size }: LabelWish,
  ground: LabelGround,
): Rectangle {
  const { inside, strokes, areas, taken } = ground;
  const clear = 0.25 * size;
  let best: Rectangle | null = null;
  let least = Infinity;
  for (const far of [0, 2, 4.5, 8, 13, 19]) {
    for (const [dx, dy] of directions(toward)) {
      for (const slide of [0, 0.5, -0.5, 1, -1, 2, -2, 3, -3]) {
        const cx = x + dx * (reach + far * size + width / 2) + (dx === 0 ? slide * width : 0);
        const cy = y + dy * (reach + far * size + height / 2) + (dy === 0 ? slide * height : 0);
        const left = clamp(cx - width / 2, inside.left, inside.right - width);
        const bottom = clamp(cy - height / 2, inside.bottom, inside.top - height);
        const box = { left, right: left + width, bottom, top: bottom + height };
        const moved = Math.hypot(left + width / 2 - cx, bottom + height / 2 - cy) / size;
        const against = dx * toward[0] + dy * toward[1] < 0 ? 2 : 0;
        const wide = grown(box, clear);
        const cost =
          10 * strokes.filter(([a, b]) => clipStroke(a, b, wide) !== null).length +
          15 * areas.filter((other) => overlap(wide, other)).length +
          200 * taken.filter((other) => overlap(wide, other)).length +
          moved +
          0.5 * far +
          against +
          0.3 * Math.abs(slide);
        if (cost < least) {
          least = cost;
          best = box;
        }
      }
    }
  }
  return best!;
}

/** Towards the wished side, then across both ways, then away. */
const directions = ([x, y]: Point): Point[] => [
  [x, y],
  [y, x],
  [-y, -x],
  [-x, -y],
];
const clamp = (value: number, low: number, high: number): number => Math.max(low, Math.min(high, value));
const overlap = (a: Rectangle, b: Rectangle): boolean =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;
