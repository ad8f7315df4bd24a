import { smallestAxis } from './smallestAxis';

/** Small flat pieces of what was scanned, one to a cube of space, however many points fell there. */
export interface Facets {
  count: number;
  /** middles, x, y, z after one another, mm */
  middles: Float64Array;
  /** unit normals, either way round */
  normals: Float64Array;
}

/** Cubes are at least this wide, mm, and no more of them are kept than fit. */
const CUBE = 25;
const MOST_CUBES = 6e6;
/** Outermost share of the points along each axis that does not count for the extent: stray points far away. */
const STRAY = 0.002;
/** A cube with its neighbours needs this many points to have a normal. */
const LEAST_POINTS = 6;
/** Thicker than this, as the spread of its points, it is not flat, mm. */
const THICKEST = 9;
/** Narrower than this, as the spread along its second axis, it is a line, mm. */
const NARROWEST = 8;

/**
 * Fills cubes with the points of a sample and takes the flat ones: normal and thickness from the scatter of the points in
 * a cube and its 26 neighbours (principal components; Pearson 1901).
 * @param sample x, y, z after one another, mm
 */
export function facetsOf(sample: Float64Array): Facets {
  const grid = cubesOf(sample);
  const { sums, cells, strides } = grid;
  const middles = new Float64Array(3 * cells.length);
  const normals = new Float64Array(3 * cells.length);
  const total = new Float64Array(SUMS);
  let count = 0;
  for (const cell of cells) {
    total.fill(0);
    for (let k = 0; k < 27; k++) {
      const at = cell + ((k % 3) - 1) + ((((k / 3) | 0) % 3) - 1) * strides[0] + (((k / 9) | 0) - 1) * strides[1];
      const slot = grid.slotOf(at);
      if (slot >= 0) for (let s = 0; s < SUMS; s++) total[s]! += sums[SUMS * slot + s]!;
    }
    const n = total[0]!;
    if (n < LEAST_POINTS) continue;
    const [x, y, z] = [total[1]! / n, total[2]! / n, total[3]! / n];
    const { values, axis } = smallestAxis([
      total[4]! / n - x * x,
      total[5]! / n - x * y,
      total[6]! / n - x * z,
      total[7]! / n - y * y,
      total[8]! / n - y * z,
      total[9]! / n - z * z,
    ]);
    if (values[0] > THICKEST ** 2 || values[1] < NARROWEST ** 2) continue;
    const own = SUMS * grid.slotOf(cell);
    const m = sums[own]!;
    for (let k = 0; k < 3; k++) {
      middles[3 * count + k] = sums[own + 1 + k]! / m + grid.middle[k]!;
      normals[3 * count + k] = axis[k]!;
    }
    count++;
  }
  return { count, middles: middles.subarray(0, 3 * count), normals: normals.subarray(0, 3 * count) };
}

/** Count, Σx Σy Σz, Σxx Σxy Σxz Σyy Σyz Σzz of a cube's points. */
const SUMS = 10;

interface Cubes {
  sums: Float64Array;
  /** occupied cubes, by their number in the grid */
  cells: Int32Array;
  /** steps in that number along y and z */
  strides: [number, number];
  /** taken off the points before they are summed */
  middle: [number, number, number];
  slotOf(cell: number): number;
}

function cubesOf(sample: Float64Array): Cubes {
  const n = sample.length / 3;
  const low: number[] = [];
  const high: number[] = [];
  for (let k = 0; k < 3; k++) {
    const axis = Float64Array.from({ length: n }, (_, i) => sample[3 * i + k]!).sort();
    low.push(axis[Math.floor(STRAY * n)] ?? 0);
    high.push(axis[Math.ceil((1 - STRAY) * n) - 1] ?? 0);
  }
  const margin = 100;
  const extent = [0, 1, 2].map((k) => high[k]! - low[k]! + 2 * margin);
  const width = Math.max(CUBE, Math.cbrt((extent[0]! * extent[1]! * extent[2]!) / MOST_CUBES));
  // One empty cube all round, so that neighbours need no test.
  const counts = extent.map((each) => Math.ceil(each / width) + 2);
  const strides: [number, number] = [counts[0]!, counts[0]! * counts[1]!];
  const slots = new Int32Array(strides[1] * counts[2]!);
  const cells = new Int32Array(n);
  const sums = new Float64Array(SUMS * n);
  const middle: [number, number, number] = [0, 1, 2].map((k) => (low[k]! + high[k]!) / 2) as [number, number, number];
  const from = low.map((each) => each - margin - width);
  let used = 0;
  for (let i = 0; i < n; i++) {
    const [px, py, pz] = [sample[3 * i]!, sample[3 * i + 1]!, sample[3 * i + 2]!];
    const [cx, cy, cz] = [
      Math.floor((px - from[0]!) / width),
      Math.floor((py - from[1]!) / width),
      Math.floor((pz - from[2]!) / width),
    ];
    if (cx < 1 || cy < 1 || cz < 1 || cx > counts[0]! - 2 || cy > counts[1]! - 2 || cz > counts[2]! - 2) continue;
    const cell = cx + cy * strides[0] + cz * strides[1];
    if (slots[cell] === 0) {
      cells[used++] = cell;
      slots[cell] = used;
    }
    const [x, y, z] = [px - middle[0], py - middle[1], pz - middle[2]];
    const at = SUMS * (slots[cell]! - 1);
    sums[at]! += 1;
    sums[at + 1]! += x;
    sums[at + 2]! += y;
    sums[at + 3]! += z;
    sums[at + 4]! += x * x;
    sums[at + 5]! += x * y;
    sums[at + 6]! += x * z;
    sums[at + 7]! += y * y;
    sums[at + 8]! += y * z;
    sums[at + 9]! += z * z;
  }
  return { sums, cells: cells.subarray(0, used), strides, middle, slotOf: (cell) => slots[cell]! - 1 };
}
