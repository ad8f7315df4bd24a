import type { EdgeName, Point } from '../../core';
import type { Place } from './drawing';
import type { Rectangle } from './rectangle';

export interface StripShape {
  edge: EdgeName;
  kind: 'sliver' | 'gap';
  polygon: Point[];
  widest: number;
}

/** Strips narrower than this are no strips, mm. */
const NOTHING = 0.01;

/**
 * The strips between one edge and the side of the sheet it is cut from, split where the edge crosses that side.
 * Beside a neighbouring edge that is cut too, a sliver reaches into the corner of the sheet.
 * @param corner the sheet, or less of it where a neighbouring strip is an offcut
 */
export function stripsAlong(
  edge: EdgeName,
  place: Place,
  path: Point[],
  sheet: Rectangle,
  corner: Rectangle,
): StripShape[] {
  const upright = place === 'left' || place === 'right';
  const side = sheet[place];
  const inward = place === 'left' || place === 'bottom' ? 1 : -1;
  const depth = (point: Point) => (upright ? point[0] - side : point[1] - side) * inward;
  const onSide = (point: Point): Point => (upright ? [side, point[1]] : [point[0], side]);
  const strips: StripShape[] = [];
  let run: Point[] = [];
  let sign = 0;
  const close = () => {
    const widest = Math.max(...run.map((point) => Math.abs(depth(point))));
    if (run.length > 1 && sign !== 0 && widest > NOTHING) {
      const ends = [run[0]!, run.at(-1)!].map((point) =>
        sign > 0 ? towardsCorner(point, path, corner, upright, onSide) : onSide(point),
      );
      strips.push({ edge, kind: sign > 0 ? 'sliver' : 'gap', polygon: [...run, ends[1]!, ends[0]!], widest });
    }
    run = [];
  };
  path.forEach((point, i) => {
    const here = Math.sign(depth(point));
    const before = path[i - 1];
    if (before && here !== 0 && sign !== 0 && here !== sign) {
      const share = depth(before) / (depth(before) - depth(point));
      const crossing: Point = [before[0] + share * (point[0] - before[0]), before[1] + share * (point[1] - before[1])];
      run.push(crossing);
      close();
      run.push(crossing);
      sign = here;
    }
    if (here !== 0) sign = sign === 0 ? here : sign;
    run.push(point);
  });
  close();
  return strips;
}

/** At an end of the edge, the sheet's own corner if the neighbouring edge is cut as well. */
function towardsCorner(
  point: Point,
  path: Point[],
  sheet: Rectangle,
  upright: boolean,
  onSide: (point: Point) => Point,
): Point {
  const end = point === path[0] ? 'first' : point === path.at(-1) ? 'last' : null;
  if (!end) return onSide(point);
  const [x, y] = onSide(point);
  const [low, high] = upright ? [sheet.bottom, sheet.top] : [sheet.left, sheet.right];
  const here = upright ? y : x;
  const corner = end === 'first' ? low : high;
  const inside = end === 'first' ? here > corner : here < corner;
  return inside ? (upright ? [x, corner] : [corner, y]) : [x, y];
}
