import type { Vec } from './vec';

/** The nine numbers of a rotation, row after row. */
export type Rows = readonly [number, number, number, number, number, number, number, number, number];

/** A rigid motion q = R p + t from a cloud's positions into another frame, mm. */
export interface RigidFrame {
  /** R, row after row */
  rotation: readonly number[];
  translation: Vec;
}

/** The frame whose axes are given (unit vectors, right-handed, in the cloud's coordinates), its origin at a point. */
export function frameAt(x: Vec, y: Vec, z: Vec, origin: Vec): RigidFrame {
  const rotation = [...x, ...y, ...z];
  return { rotation, translation: negated(rotated(rotation, origin)) };
}

export function moved({ rotation, translation }: RigidFrame, p: Vec): Vec {
  const [x, y, z] = rotated(rotation, p);
  return [x + translation[0], y + translation[1], z + translation[2]];
}

/** Moves points, x, y, z after one another, into another array or in place. */
export function movePoints(
  { rotation, translation: [tx, ty, tz] }: RigidFrame,
  from: Float32Array | Float64Array,
  to: Float32Array | Float64Array,
): void {
  const [a, b, c, d, e, f, g, h, i] = rotation as unknown as Rows;
  for (let at = 0; at < from.length; at += 3) {
    const x = from[at]!;
    const y = from[at + 1]!;
    const z = from[at + 2]!;
    to[at] = a * x + b * y + c * z + tx;
    to[at + 1] = d * x + e * y + f * z + ty;
    to[at + 2] = g * x + h * y + i * z + tz;
  }
}

/** The same frame with its origin moved to a point given in it. */
export function withOrigin({ rotation, translation }: RigidFrame, [x, y, z]: Vec): RigidFrame {
  return { rotation, translation: [translation[0] - x, translation[1] - y, translation[2] - z] };
}

const rotated = (r: readonly number[], [x, y, z]: Vec): Vec => [
  r[0]! * x + r[1]! * y + r[2]! * z,
  r[3]! * x + r[4]! * y + r[5]! * z,
  r[6]! * x + r[7]! * y + r[8]! * z,
];
const negated = ([x, y, z]: Vec): Vec => [-x, -y, -z];
