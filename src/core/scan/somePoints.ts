import { evenlyAmong } from '../range';

/**
 * At most `most` points, evenly through all.
 * @param positions x, y, z after one another
 */
export function somePoints<Positions extends Float32Array | Float64Array>(
  positions: Positions,
  most: number,
): Positions {
  if (positions.length <= 3 * most) return positions;
  const some = positions.slice(0, 3 * most) as Positions;
  evenlyAmong(positions.length / 3, most).forEach((i, k) => {
    some[3 * k] = positions[3 * i]!;
    some[3 * k + 1] = positions[3 * i + 1]!;
    some[3 * k + 2] = positions[3 * i + 2]!;
  });
  return some;
}
