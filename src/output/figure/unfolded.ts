import type { Point, Result, WallName } from '../../core';
import { around, type Rectangle } from '../drawing';

/** The three walls laid side by side as one turns to face each: left, back, right. */
export interface Unfolded {
  /** wall coordinates to the figure's, mm */
  place: (wall: WallName, point: Point) => Point;
  bounds: Rectangle;
  /** middle of each panel */
  middle: Record<WallName, Point>;
}

/** Room between two walls, share of the widest. */
const BETWEEN = 0.14;

/** On the left wall u grows to the viewer's left. */
const turned = (wall: WallName, [u, v]: Point): Point => [wall === 'left' ? -u : u, v];

export function unfolded({ panels }: Pick<Result, 'panels'>): Unfolded {
  const boxes = Object.fromEntries(
    (['left', 'back', 'right'] as const).map((wall) => [
      wall,
      around(panels[wall].outline.map((point) => turned(wall, point))),
    ]),
  ) as Record<WallName, Rectangle>;
  const between = BETWEEN * Math.max(...Object.values(boxes).map(({ left, right }) => right - left));
  const width = (wall: WallName): number => boxes[wall].right - boxes[wall].left;
  const start = { left: 0, back: width('left') + between, right: width('left') + width('back') + 2 * between };
  const place = (wall: WallName, point: Point): Point => {
    const [x, y] = turned(wall, point);
    return [x - boxes[wall].left + start[wall], y];
  };
  const middleOf = (wall: WallName): Point => [
    start[wall] + width(wall) / 2,
    (boxes[wall].bottom + boxes[wall].top) / 2,
  ];
  return {
    place,
    bounds: {
      left: 0,
      right: start.right + width('right'),
      bottom: Math.min(...Object.values(boxes).map(({ bottom }) => bottom)),
      top: Math.max(...Object.values(boxes).map(({ top }) => top)),
    },
    middle: { left: middleOf('left'), back: middleOf('back'), right: middleOf('right') },
  };
}
