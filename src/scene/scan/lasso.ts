/** A place on the drawing, px from its left and its top. */
export type ScreenPoint = readonly [x: number, y: number];

/**
 * How the drawing shows a place: columns of the 4 × 4 matrix from the cloud's coordinates to the clip cube, and its
 * size in px.
 */
export interface Projection {
  matrix: readonly number[];
  width: number;
  height: number;
}

/**
 * The points that appear inside a closed line on the drawing.
 * @param positions x y z of each
 * @param wanted which of the points can be picked, by number
 */
export function pointsInLasso(
  positions: Float32Array,
  wanted: (point: number) => boolean,
  { matrix: m, width, height }: Projection,
  line: readonly ScreenPoint[],
): Uint32Array {
  const xs = line.map(([x]) => x);
  const ys = line.map(([, y]) => y);
  const [left, right, top, bottom] = [Math.min(...xs), Math.max(...xs), Math.min(...ys), Math.max(...ys)];
  const found: number[] = [];
  for (let i = 0, at = 0; at < positions.length; i++, at += 3) {
    const [x, y, z] = [positions[at]!, positions[at + 1]!, positions[at + 2]!];
    const w = m[3]! * x + m[7]! * y + m[11]! * z + m[15]!;
    // Behind the eye.
    if (w <= 0) continue;
    const px = (((m[0]! * x + m[4]! * y + m[8]! * z + m[12]!) / w + 1) / 2) * width;
    if (px < left || px > right) continue;
    const py = ((1 - (m[1]! * x + m[5]! * y + m[9]! * z + m[13]!) / w) / 2) * height;
    if (py < top || py > bottom || !wanted(i) || !inside(line, px, py)) continue;
    found.push(i);
  }
  return Uint32Array.from(found);
}

/** By the even-odd rule. */
function inside(line: readonly ScreenPoint[], x: number, y: number): boolean {
  let within = false;
  for (let i = 0, j = line.length - 1; i < line.length; j = i++) {
    const [ax, ay] = line[i]!;
    const [bx, by] = line[j]!;
    if (ay > y !== by > y && x < ((bx - ax) * (y - ay)) / (by - ay) + ax) within = !within;
  }
  return within;
}
