import type { Point, Result, Side, Vec3, WallName } from '../../core';

/** The measured surfaces, as coarse as a first picture needs: bilinear between the corners of what was sampled. */
export interface Surfaces {
  back(x: number, y: number): number;
  side(wall: Side, y: number, z: number): number;
  rim(x: number, z: number): number;
}

const bilinear = (rows: readonly number[], columns: readonly number[], values: readonly (readonly number[])[]) => {
  const [r0, r1] = [rows[0]!, rows.at(-1)!];
  const [c0, c1] = [columns[0]!, columns.at(-1)!];
  const [first, last] = [values[0]!, values.at(-1)!];
  const between = (a: number, b: number, t: number) => a + (b - a) * t;
  return (row: number, column: number): number => {
    const s = r1 === r0 ? 0 : (row - r0) / (r1 - r0);
    const t = c1 === c0 ? 0 : (column - c0) / (c1 - c0);
    return between(between(first[0]!, first.at(-1)!, t), between(last[0]!, last.at(-1)!, t), s);
  };
};

/** The point `off` mm into the room from a wall's face at wall coordinates (u, v). */
export const onWall = ({ back, side }: Surfaces, wall: WallName, [u, v]: Point, off: number): Vec3 =>
  wall === 'back' ? [u, v, back(u, v) + off] : [side(wall, v, u) + (wall === 'left' ? off : -off), v, u];

export function surfacesOf({ walls, rim }: Pick<Result, 'walls' | 'rim'>): Surfaces {
  const of = ({ height, at, value }: Result['walls']['back']['sampled']) => bilinear(height, at, value);
  const [back, left, right] = [of(walls.back.sampled), of(walls.left.sampled), of(walls.right.sampled)];
  const rimAt = bilinear(rim.z, rim.x, rim.value);
  return {
    back: (x, y) => back(y, x),
    side: (wall, y, z) => (wall === 'left' ? left : right)(y, z),
    rim: (x, z) => rimAt(z, x),
  };
}
