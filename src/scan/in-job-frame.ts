import type { RigidFrame } from '../core';

/** Moves points into the job's frame, in place. */
export function inJobFrame<P extends { positions: Float32Array }>(cloud: P, { rotation, translation }: RigidFrame): P {
  const { positions } = cloud;
  const [a, b, c, d, e, f, g, h, i] = rotation as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const [tx, ty, tz] = translation;
  for (let at = 0; at < positions.length; at += 3) {
    const [x, y, z] = [positions[at]!, positions[at + 1]!, positions[at + 2]!];
    positions[at] = a * x + b * y + c * z + tx;
    positions[at + 1] = d * x + e * y + f * z + ty;
    positions[at + 2] = g * x + h * y + i * z + tz;
  }
  return cloud;
}
