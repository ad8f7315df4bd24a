import { type Cubes, cubesOf, SUMS, slotOfCube } from './cubes';
import { smallestAxis } from './smallestAxis';

/** Small flat pieces of what was scanned, one to a cube of space, however many points fell there. */
export interface Facets {
  count: number;
  /** middles, x, y, z after one another, mm */
  middles: Float64Array;
  /** unit normals, either way round */
  normals: Float64Array;
}

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
  const cubes = cubesOf(sample);
  const { sums, cells, middle } = cubes;
  const steps = neighbourSteps(cubes);
  const middles = new Float64Array(3 * cells.length);
  const normals = new Float64Array(3 * cells.length);
  const total = new Float64Array(SUMS);
  let count = 0;
  for (let slot = 0; slot < cells.length; slot++) {
    addNeighbours(cubes, cells[slot]!, steps, total);
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
    const own = SUMS * slot;
    const m = sums[own]!;
    for (let k = 0; k < 3; k++) {
      middles[3 * count + k] = sums[own + 1 + k]! / m + middle[k]!;
      normals[3 * count + k] = axis[k]!;
    }
    count++;
  }
  return { count, middles: middles.subarray(0, 3 * count), normals: normals.subarray(0, 3 * count) };
}

/** Steps in a cube's number to itself and its 26 neighbours. */
function neighbourSteps({ strides: [along, across] }: Cubes): Int32Array {
  const near = [-1, 0, 1];
  return Int32Array.from(near.flatMap((x) => near.flatMap((y) => near.map((z) => x + y * along + z * across))));
}

function addNeighbours(cubes: Cubes, cell: number, steps: Int32Array, total: Float64Array): void {
  const { sums } = cubes;
  total.fill(0);
  for (let k = 0; k < steps.length; k++) {
    const from = SUMS * (slotOfCube(cubes, cell + steps[k]!) - 1);
    if (from < 0) continue;
    for (let s = 0; s < SUMS; s++) total[s]! += sums[from + s]!;
  }
}
