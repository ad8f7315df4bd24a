/** Cubes are at least this wide, mm, and no more of them are kept than fit. */
const CUBE = 25;
const MOST_CUBES = 6e6;
/** Outermost share of the points along each axis that does not count for the extent: stray points far away. */
const STRAY = 0.002;
/** Points that the extent is taken from. */
const FOR_EXTENT = 6000;
/** Room beyond that extent, mm. */
const MARGIN = 100;

/** Count, Σx Σy Σz, Σxx Σxy Σxz Σyy Σyz Σzz of a cube's points. */
export const SUMS = 10;

/** Cubes of space that hold points, with the sums of those. */
export interface Cubes {
  /** SUMS for each occupied cube */
  sums: Float64Array;
  /** occupied cubes, by their number in the grid, round which an empty layer lies */
  cells: Int32Array;
  /** places of occupied cubes among `cells`, + 1, hashed by their number; open addressing, 0 where nothing lies */
  hashed: Int32Array;
  /** steps in a cube's number along y and z */
  strides: [number, number];
  /** taken off the points before they are summed */
  middle: [number, number, number];
}

/** @param sample x, y, z after one another, mm */
export function cubesOf(sample: Float64Array): Cubes {
  const n = sample.length / 3;
  const { low, high } = extentOf(sample);
  const extent = [0, 1, 2].map((k) => high[k]! - low[k]! + 2 * MARGIN);
  const width = Math.max(CUBE, Math.cbrt((extent[0]! * extent[1]! * extent[2]!) / MOST_CUBES));
  const [nx, ny, nz] = extent.map((each) => Math.ceil(each / width) + 2) as [number, number, number];
  const [fx, fy, fz] = low.map((each) => each - MARGIN - width) as [number, number, number];
  const strides: [number, number] = [nx, nx * ny];
  const cells = new Int32Array(n);
  const hashed = new Int32Array(2 ** Math.ceil(Math.log2(2 * n + 2)));
  const slotOf = new Int32Array(n);
  let used = 0;
  for (let i = 0; i < n; i++) {
    const cx = Math.floor((sample[3 * i]! - fx) / width);
    const cy = Math.floor((sample[3 * i + 1]! - fy) / width);
    const cz = Math.floor((sample[3 * i + 2]! - fz) / width);
    if (cx < 1 || cy < 1 || cz < 1 || cx > nx - 2 || cy > ny - 2 || cz > nz - 2) continue;
    const cell = cx + cy * strides[0] + cz * strides[1];
    const at = hashedAt(hashed, cells, cell);
    if (hashed[at] === 0) {
      cells[used++] = cell;
      hashed[at] = used;
    }
    slotOf[i] = hashed[at]!;
  }
  const middle = [0, 1, 2].map((k) => (low[k]! + high[k]!) / 2) as [number, number, number];
  return { sums: sumsOf(sample, slotOf, used, middle), cells: cells.subarray(0, used), hashed, strides, middle };
}

/** Place of a cube among those occupied, + 1, or 0 where it is empty. */
export const slotOfCube = ({ hashed, cells }: Cubes, cell: number): number => hashed[hashedAt(hashed, cells, cell)]!;

/** Where a cube's place is hashed to, or would be (multiplicative hashing; Knuth, vol. 3, 6.4). */
function hashedAt(hashed: Int32Array, cells: Int32Array, cell: number): number {
  const mask = hashed.length - 1;
  const spread = Math.imul(cell, 0x9e3779b1);
  let at = (spread ^ (spread >>> 15)) & mask;
  while (hashed[at] !== 0 && cells[hashed[at]! - 1] !== cell) at = (at + 1) & mask;
  return at;
}

function sumsOf(
  sample: Float64Array,
  slotOf: Int32Array,
  used: number,
  [mx, my, mz]: [number, number, number],
): Float64Array {
  const sums = new Float64Array(SUMS * used);
  for (let i = 0; i < slotOf.length; i++) {
    const at = SUMS * (slotOf[i]! - 1);
    if (at < 0) continue;
    const x = sample[3 * i]! - mx;
    const y = sample[3 * i + 1]! - my;
    const z = sample[3 * i + 2]! - mz;
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
  return sums;
}

function extentOf(sample: Float64Array): { low: number[]; high: number[] } {
  const n = sample.length / 3;
  const step = Math.max(1, Math.floor(n / FOR_EXTENT));
  const few = Math.ceil(n / step);
  const low: number[] = [];
  const high: number[] = [];
  for (let k = 0; k < 3; k++) {
    const axis = new Float64Array(few);
    for (let i = 0; i < few; i++) axis[i] = sample[3 * step * i + k]!;
    axis.sort();
    low.push(axis[Math.floor(STRAY * few)] ?? 0);
    high.push(axis[Math.ceil((1 - STRAY) * few) - 1] ?? 0);
  }
  return { low, high };
}
