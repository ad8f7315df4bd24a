/** The golden ratio's fraction: its multiples fall evenly on a stretch and keep no rhythm. */
const golden = (Math.sqrt(5) - 1) / 2;

/**
 * At most `most` points, one out of each run of equal length, where in it by the golden ratio, so that the rows of a
 * scanner's own grid do not show.
 * @param positions x, y, z after one another
 */
export function someOf(positions: Float32Array, most: number): Float32Array {
  const count = positions.length / 3;
  if (count <= most) return positions;
  const run = count / most;
  const some = new Float32Array(3 * most);
  for (let k = 0; k < most; k++) {
    const from = 3 * Math.floor((k + ((k * golden) % 1)) * run);
    some[3 * k] = positions[from]!;
    some[3 * k + 1] = positions[from + 1]!;
    some[3 * k + 2] = positions[from + 2]!;
  }
  return some;
}
