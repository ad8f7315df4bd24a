import type { Point } from '../../core';
import type { PanelDrawing } from './drawing';
import type { Rectangle } from './rectangle';
import { line, polygon, type Shape } from './shape';

/** The sheet and its slivers as far as the drawing's bounds; where the sheet goes on, its side is a break line. */
export function croppedSheet({ sheet, bounds, strips }: PanelDrawing, zigzag: number): Shape[] {
  const [left, right] = [Math.max(sheet.left, bounds.left), Math.min(sheet.right, bounds.right)];
  const [bottom, top] = [Math.max(sheet.bottom, bounds.bottom), Math.min(sheet.top, bounds.top)];
  const side = (from: Point, to: Point, broken: boolean): Shape =>
    broken
      ? { kind: 'polyline', layer: 'sheet', points: breakLine(from, to, zigzag), closed: false }
      : line('sheet', from, to);
  return [
    side([left, bottom], [right, bottom], sheet.bottom < bottom),
    side([right, bottom], [right, top], sheet.right > right),
    side([right, top], [left, top], sheet.top > top),
    side([left, top], [left, bottom], sheet.left < left),
    ...strips
      .filter(({ kind }) => kind !== 'offcut')
      .map(({ kind, polygon: points }) => polygon(kind === 'gap' ? 'gap' : 'sliver', within(points, bounds))),
  ];
}

/** A straight line with one zigzag at its middle. */
export function breakLine(from: Point, to: Point, size: number): Point[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]) || 1;
  const [x, y] = [(to[0] - from[0]) / length, (to[1] - from[1]) / length];
  const at = (along: number, across: number): Point => [
    (from[0] + to[0]) / 2 + along * x - across * y,
    (from[1] + to[1]) / 2 + along * y + across * x,
  ];
  return [from, at(-size, 0), at(-size / 2, size), at(size / 2, -size), at(size, 0), to];
}

/** A polygon cut to a rectangle, one side after the other (Sutherland–Hodgman). */
function within(points: Point[], { left, right, bottom, top }: Rectangle): Point[] {
  const sides: ((point: Point) => number)[] = [
    ([x]) => x - left,
    ([x]) => right - x,
    ([, y]) => y - bottom,
    ([, y]) => top - y,
  ];
  return sides.reduce(
    (kept, depth) =>
      kept.flatMap((point, i): Point[] => {
        const before = kept[(i + kept.length - 1) % kept.length]!;
        const [was, is] = [depth(before), depth(point)];
        const crossing: Point[] =
          was < 0 !== is < 0
            ? [
                [
                  before[0] + (was / (was - is)) * (point[0] - before[0]),
                  before[1] + (was / (was - is)) * (point[1] - before[1]),
                ],
              ]
            : [];
        return is < 0 ? crossing : [...crossing, point];
      }),
    points,
  );
}
