import { evenlyAmong } from '../../core';

/**
 * At most `most` points, evenly through all.
 * @param positions x, y, z after one another
 */
export function someOf(positions: Float32Array, most: number): Float32Array {
  const count = positions.length / 3;
  if (count <= most) return positions;
  const some = new Float32Array(3 * most);
  evenlyAmong(count, most).forEach((i, k) => {
    some[3 * k] = positions[3 * i]!;
    some[3 * k + 1] = positions[3 * i + 1]!;
    some[3 * k + 2] = positions[3 * i + 2]!;
  });
  return some;
}
