import type { Shelf, Trim } from '../job-file';
import type { Point } from '../panel';

/** Straight joins keep within 0.05 mm of a quarter of an ellipse up to 800 mm long. */
const ARC_STEPS = 72;

/** The three corners that make a shelf, flat coordinates: in the corner, and at the ends along back and side wall. */
export interface ShelfCorners {
  inner: Point;
  back: Point;
  side: Point;
}

/** From the inner corner along the back edge, along the front, and back along the side edge; not closed. */
export function shelfOutline({ inner, back, side }: ShelfCorners, shelf: Shelf, trim: Trim): Point[] {
  const alongBack = direction(inner, back);
  const alongSide = direction(inner, side);
  const start = trim.insideCorners
    ? aroundAngleStrip(inner, alongBack, alongSide, trim.angleStrip)
    : { from: [inner], to: [] };
  return [...start.from, back, ...front(), side, ...start.to];

  function front(): Point[] {
    if (shelf.front === 'straight') return [];
    if (shelf.front === 'returned') {
      return [
        move(back, squareTo(alongBack, alongSide), shelf.returns),
        move(side, squareTo(alongSide, alongBack), shelf.returns),
      ];
    }
    return Array.from({ length: ARC_STEPS - 1 }, (_, k): Point => {
      const turn = ((k + 1) / ARC_STEPS) * (Math.PI / 2);
      const [b, s] = [Math.cos(turn), Math.sin(turn)];
      return [
        inner[0] + b * (back[0] - inner[0]) + s * (side[0] - inner[0]),
        inner[1] + b * (back[1] - inner[1]) + s * (side[1] - inner[1]),
      ];
    });
  }
}

/** The inner corner cut out around an angle strip's two flanges. */
function aroundAngleStrip(inner: Point, alongBack: Point, alongSide: Point, { width, thickness }: Trim['angleStrip']) {
  const slant = thickness / Math.abs(alongBack[0] * alongSide[1] - alongBack[1] * alongSide[0]);
  const onBack = move(inner, alongBack, width);
  const onSide = move(inner, alongSide, width);
  return {
    from: [move(move(inner, alongBack, slant), alongSide, slant), move(onBack, alongSide, slant), onBack],
    to: [onSide, move(onSide, alongBack, slant)],
  };
}

export const direction = (from: Point, to: Point): Point => {
  const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
  return [(to[0] - from[0]) / long, (to[1] - from[1]) / long];
};

const move = (point: Point, towards: Point, by: number): Point => [
  point[0] + by * towards[0],
  point[1] + by * towards[1],
];

/** Unit vector square to `along`, on the side that `other` points to. */
function squareTo([x, y]: Point, other: Point): Point {
  return -y * other[0] + x * other[1] > 0 ? [-y, x] : [y, -x];
}
