import type { Panel } from '../../core';

type Point = readonly [number, number];
interface Corner {
  wall: Point;
  sheet: Point;
}

/**
 * The outline of what is really there, in wall coordinates: the panel's outline less what the sheet does not reach
 * (Sutherland and Hodgman, 1974, against the sheet's four edges).
 */
export function coveredOutline({ outline, flat }: Pick<Panel, 'outline' | 'flat'>): Point[] {
  const { left, right, bottom, top } = flat.sheet;
  const corners = outline.map((wall, i): Corner => ({ wall, sheet: flat.outline[i]! }));
  return [
    (sheet: Point) => sheet[0] - left,
    (sheet: Point) => right - sheet[0],
    (sheet: Point) => sheet[1] - bottom,
    (sheet: Point) => top - sheet[1],
  ]
    .reduce(clip, corners)
    .map(({ wall }) => wall);
}

function clip(corners: Corner[], inside: (sheet: Point) => number): Corner[] {
  return corners.flatMap((corner, i) => {
    const next = corners[(i + 1) % corners.length]!;
    const [here, there] = [inside(corner.sheet), inside(next.sheet)];
    const kept = here >= 0 ? [corner] : [];
    if (here >= 0 === there >= 0) return kept;
    const t = here / (here - there);
    return [...kept, { wall: between(corner.wall, next.wall, t), sheet: between(corner.sheet, next.sheet, t) }];
  });
}

const between = (a: Point, b: Point, t: number): Point => [a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t];
