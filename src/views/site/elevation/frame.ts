import { type Result, type Side, spaced, type WallName } from '../../../core';

/** A point of the development, mm: x to the right from the plumb line, y up from the level line. */
export type Point = readonly [x: number, y: number];

/** The three walls unrolled side by side: left wall, back wall, right wall. */
export interface Frame {
  /** a place of a wall; `at` is x on the back wall and the distance out from the corner on a side wall */
  point(wall: WallName, at: number, height: number): Point;
  corner: Record<Side, (height: number) => number>;
  /** how far out from the corner the front edge of a side wall lies */
  front: Record<Side, (height: number) => number>;
  /** height of the rim below a place of a wall */
  rim(wall: WallName, at: number): number;
  top: number;
  box: { left: number; right: number; bottom: number; top: number };
}

const STEPS = 8;
/** Wall drawn below the rim, mm. */
const BELOW_RIM = 70;

/** Unrolls the alcove as far as it is known; what is not measured stands where the job supposes it. */
export function frameOf({ walls, rim, front }: Pick<Result, 'walls' | 'rim' | 'front'>): Frame {
  const cornerOf = (side: Side) => {
    const { at, height, value } = walls[side].sampled;
    const nearest = at.reduce((best, z, j) => (Math.abs(z) < Math.abs(at[best]!) ? j : best), 0);
    return between(
      height,
      value.map((row) => row[nearest]!),
    );
  };
  const corner = { left: cornerOf('left'), right: cornerOf('right') };
  const frontOf = (side: Side) => between(front[side].height, front[side].value);
  const fronts = { left: frontOf('left'), right: frontOf('right') };
  const lastColumn = rim.x.length - 1;
  const rims = {
    back: between(rim.x, rim.value[0]!),
    left: between(
      rim.z,
      rim.value.map((row) => row[0]!),
    ),
    right: between(
      rim.z,
      rim.value.map((row) => row[lastColumn]!),
    ),
  };
  const point = (wall: WallName, at: number, height: number): Point => {
    if (wall === 'left') return [corner.left(height) - at, height];
    return [wall === 'right' ? corner.right(height) + at : at, height];
  };
  const top = Math.max(...walls.back.sampled.height);
  const bottom = Math.min(...rim.value.flat()) - BELOW_RIM;
  const ends = [bottom, 0, top];
  return {
    point,
    corner,
    front: fronts,
    rim: (wall, at) => rims[wall](at),
    top,
    box: {
      left: Math.min(...ends.map((y) => point('left', fronts.left(y), y)[0])),
      right: Math.max(...ends.map((y) => point('right', fronts.right(y), y)[0])),
      bottom,
      top,
    },
  };
}

/** Outline of a wall from the rim up, anticlockwise as seen. */
export function wallOutline(frame: Frame, wall: WallName): Point[] {
  const { corner, front, top } = frame;
  const foot = (at: number): Point => frame.point(wall, at, frame.rim(wall, at));
  const upright = (at: (y: number) => number, from: number): Point[] =>
    spaced(from, top, STEPS + 1).map((y) => frame.point(wall, at(y), y));
  if (wall === 'back') {
    const [left, right] = [corner.left(0), corner.right(0)];
    return [
      ...spaced(left, right, STEPS + 1).map(foot),
      ...upright(corner.right, frame.rim('back', right)),
      ...upright(corner.left, frame.rim('back', left)).reverse(),
    ];
  }
  const out = front[wall](0);
  return [
    ...spaced(0, out, STEPS + 1).map(foot),
    ...upright(front[wall], frame.rim(wall, out)),
    ...upright(() => 0, frame.rim(wall, 0)).reverse(),
  ];
}

/** The rim along the three walls, from left to right. */
export function rimLine(frame: Frame): Point[] {
  const { corner, front } = frame;
  const along = (wall: WallName, from: number, to: number): Point[] =>
    spaced(from, to, STEPS + 1).map((at) => frame.point(wall, at, frame.rim(wall, at)));
  return [
    ...along('left', front.left(0), 0),
    ...along('back', corner.left(0), corner.right(0)),
    ...along('right', 0, front.right(0)),
  ];
}

/** A line through values at increasing knots, straight between them and beyond. */
function between(knots: readonly number[], values: readonly number[]): (at: number) => number {
  return (at) => {
    let i = 0;
    while (i + 2 < knots.length && knots[i + 1]! <= at) i++;
    const [a, b] = [knots[i]!, knots[i + 1] ?? knots[i]!];
    const share = a === b ? 0 : (at - a) / (b - a);
    return values[i]! * (1 - share) + (values[i + 1] ?? values[i]!) * share;
  };
}
