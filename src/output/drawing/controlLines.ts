import type { Panel, Point } from '../../core';
import type { ControlLine } from './drawing';
import type { Lengths } from './lengths';
import type { Orientation } from './orientation';
import type { Rectangle } from './rectangle';

export interface ControlLines {
  levelLine: ControlLine;
  plumbDatum: ControlLine;
  /** mm above the level line, square to it; below is negative */
  up: (point: Point) => number;
  /** mm to the right of the plumb line as drawn, square to it; left is negative */
  across: (point: Point) => number;
}

/** The level line and the plumb line of a panel as drawn, and offsets from them. */
export function controlLines(panel: Panel, sheet: Rectangle, { point }: Orientation, lengths: Lengths): ControlLines {
  const level = growing(panel.flat.levelLine.map(point) as [Point, Point], 0);
  const datum = growing(panel.flat.plumbDatum.line.map(point) as [Point, Point], 1);
  const up = squareOff(level, 'left');
  const across = squareOff(datum, 'right');
  const crossing: Point = meet(level, datum);
  const where = panel.name === 'back' ? '' : '; it runs through the back edge at the level line';
  const [left, right] = [crossing[0] - sheet.left, sheet.right - crossing[0]];
  const [below, above] = [crossing[1] - sheet.bottom, sheet.top - crossing[1]];
  const from = (mm: number, inside: string, outside: string, edge: string) =>
    `${lengths.fine(Math.abs(mm)).text} ${mm < 0 ? outside : inside} ${edge}`;
  return {
    levelLine: {
      line: level,
      label: 'LEVEL LINE',
      setOut: `Level line: ${from(above, 'below', 'above', "the sheet's top edge")} (${from(below, 'above', 'below', 'its bottom edge')}).`,
    },
    plumbDatum: {
      line: datum,
      label: 'PLUMB LINE',
      setOut: `Plumb line: ${from(left, 'from', 'outside', "the sheet's left edge as drawn")} (${from(right, 'from', 'outside', 'its right edge')})${where}.`,
    },
    up,
    across,
  };
}

/** The line directed so that the coordinate on `axis` grows. */
const growing = ([a, b]: [Point, Point], axis: 0 | 1): [Point, Point] => (a[axis] <= b[axis] ? [a, b] : [b, a]);

/** Signed distance of a point from the line a → b, positive on the given hand. */
function squareOff([a, b]: [Point, Point], hand: 'left' | 'right'): (point: Point) => number {
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const [x, y] = [(b[0] - a[0]) / length, (b[1] - a[1]) / length];
  const sign = hand === 'left' ? 1 : -1;
  return (point) => sign * (x * (point[1] - a[1]) - y * (point[0] - a[0]));
}

function meet([a, b]: [Point, Point], [c, d]: [Point, Point]): Point {
  const [rx, ry, sx, sy] = [b[0] - a[0], b[1] - a[1], d[0] - c[0], d[1] - c[1]];
  const share = ((c[0] - a[0]) * sy - (c[1] - a[1]) * sx) / (rx * sy - ry * sx);
  return [a[0] + share * rx, a[1] + share * ry];
}
