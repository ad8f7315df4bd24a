import { extent, type Point } from '../../core';

export interface Rectangle {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

export const corners = ({ left, right, bottom, top }: Rectangle): Point[] => [
  [left, bottom],
  [right, bottom],
  [right, top],
  [left, top],
];

/** The smallest upright rectangle around points. */
export function around(points: readonly Point[]): Rectangle {
  const [left, right] = extent(points, 0);
  const [bottom, top] = extent(points, 1);
  return { left, right, bottom, top };
}

/** The rectangle with each side moved outwards, inwards where `by` is less than nothing. */
export const grown = ({ left, right, bottom, top }: Rectangle, by: number): Rectangle => ({
  left: left - by,
  right: right + by,
  bottom: bottom - by,
  top: top + by,
});

export const holds = ({ left, right, bottom, top }: Rectangle, [x, y]: Point): boolean =>
  x >= left && x <= right && y >= bottom && y <= top;
