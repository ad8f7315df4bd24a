import { crowdsOf } from './crowds';
import type { Facets } from './facets';
import { fieldAt } from './field';
import { addHeight, roomForHeights } from './heights';
import { type RobustField, robustField } from './robustField';
import type { WallLabel } from './surfaces';

const LEVEL = Math.cos((12 * Math.PI) / 180);
const STEP = 10;
/** Side of the patches of the ledge that count once, mm. */
const PATCH = 20;
/** The rim is looked for within this of the walls, mm: the ledge that runs along them. */
const LEDGE = 70;
/** Nearer to a wall than this points may be the wall's own, mm. */
const CLEAR = 14;
/** A crowd of fewer facets, or points, is none. */
const LEAST_FACETS = 25;
const LEAST_POINTS = 60;
/** Between rim and floor at least this, mm; nearer, both are one: a shower floor. */
const LEAST_STEP = 30;
/** The rim lies at most this far above where the walls' facets end, mm. */
const ABOVE_FOOT = 60;

export interface Levels {
  rim: RobustField | null;
  floor: number | null;
  ceiling: number | null;
}

/**
 * Rim, floor and ceiling: the rim is the height at which most points lie along the walls, about where these end below; it is
 * too narrow to show as facets. The floor is the lowest crowd of level facets outside the alcove, the ceiling the crowd
 * of those above the walls' middle.
 * @param sample points in the wall frame, x, y, z after one another
 * @param depth how far out the side walls reach, mm
 */
export function levelsOf(
  facets: Facets,
  sample: Float64Array,
  walls: Record<WallLabel, RobustField>,
  depth: number,
): Levels {
  const middle = middleHeight(facets);
  const { outside, above } = levelFacets(facets, walls, depth);
  const rim = rimOf(sample, walls, footOf(facets, walls, depth) + ABOVE_FOOT, depth);
  const floor = crowdedHeight(
    outside.filter((y) => y < middle),
    LEAST_FACETS,
  );
  const rimHeight = rim && fieldAt(rim.field, 0, 0);
  return {
    rim,
    floor: floor !== null && rimHeight !== null && floor > rimHeight - LEAST_STEP ? null : floor,
    ceiling: crowdedHeight(
      above.filter((y) => y > middle),
      100,
    ),
  };
}

/** Heights of level facets outside the opening, and of those inside the alcove. */
function levelFacets({ count, middles, normals }: Facets, walls: Record<WallLabel, RobustField>, depth: number) {
  const outside: number[] = [];
  const above: number[] = [];
  for (let f = 0; f < 3 * count; f += 3) {
    if (Math.abs(normals[f + 1]!) < LEVEL) continue;
    const y = middles[f + 1]!;
    const z = middles[f + 2]!;
    if (z > depth + 60) outside.push(y);
    else if (fromWalls(walls, middles[f]!, y, z) > -20) above.push(y);
  }
  return { outside, above };
}

/** Distance to the nearest wall, inwards. */
const fromWalls = ({ back, left, right }: Record<WallLabel, RobustField>, x: number, y: number, z: number): number =>
  Math.min(z - fieldAt(back.field, x, y), x - fieldAt(left.field, z, y), fieldAt(right.field, z, y) - x);

const cubeOf = (x: number, y: number, z: number): number =>
  (Math.floor(y / STEP) + 2048) * 2 ** 26 + (Math.floor(x / PATCH) + 4096) * 2 ** 13 + Math.floor(z / PATCH) + 4096;

function rimOf(
  sample: Float64Array,
  walls: Record<WallLabel, RobustField>,
  highest: number,
  depth: number,
): RobustField | null {
  const inside = roomForHeights();
  const ledge: number[] = [];
  const seen = new Set<number>();
  for (let p = 0; p < sample.length; p += 3) {
    const y = sample[p + 1]!;
    const z = sample[p + 2]!;
    if (y > highest || z > depth + 60) continue;
    const x = sample[p]!;
    const away = fromWalls(walls, x, y, z);
    if (away < CLEAR) continue;
    addHeight(inside, x, z, y);
    if (away >= LEDGE) continue;
    // Each small cube counts once, however close something stood to the scanner.
    const cube = cubeOf(x, y, z);
    if (seen.has(cube)) continue;
    seen.add(cube);
    ledge.push(y);
  }
  const height = crowdedHeight(ledge, LEAST_POINTS);
  if (height === null) return null;
  const near = roomForHeights();
  for (let i = 0; i < inside.count; i++) {
    if (Math.abs(inside.h[i]! - height) < 30) addHeight(near, inside.a[i]!, inside.b[i]!, inside.h[i]!);
  }
  return robustField(near, {
    start: Float64Array.of(height * 1e-3, 0, 0, 0, 0, 0),
    within: [25, 15, 10, 10],
    bowSd: 8,
  });
}

/** Where the walls end below, as far as their facets show. */
function footOf({ count, middles, normals }: Facets, walls: Record<WallLabel, RobustField>, depth: number): number {
  const heights = new Float64Array(count);
  let found = 0;
  for (let f = 0; f < 3 * count; f += 3) {
    const z = middles[f + 2]!;
    if (Math.abs(normals[f + 1]!) > 0.2 || z > depth) continue;
    const y = middles[f + 1]!;
    if (Math.abs(fromWalls(walls, middles[f]!, y, z)) < 15) heights[found++] = y;
  }
  return heights.subarray(0, found).sort()[Math.floor(0.03 * found)] ?? 0;
}

/** Halfway up what the walls show. */
function middleHeight({ count, middles, normals }: Facets): number {
  const heights = new Float64Array(count);
  let found = 0;
  for (let f = 0; f < 3 * count; f += 3) if (Math.abs(normals[f + 1]!) < 0.2) heights[found++] = middles[f + 1]!;
  const sorted = heights.subarray(0, found).sort();
  const at = (share: number): number => sorted[Math.floor(share * (found - 1))] ?? 0;
  return (at(0.05) + at(0.95)) / 2;
}

/** The height at which most of these lie within 15 mm, or null where fewer than `least` do. */
function crowdedHeight(heights: number[], least: number): number | null {
  const { steps, crowd } = crowdsOf(heights, STEP);
  let best: { count: number; k: number } = { count: 0, k: 0 };
  for (const k of steps) {
    const count = crowd(k);
    if (count > best.count || (count === best.count && k < best.k)) best = { count, k };
  }
  if (best.count < least) return null;
  const near = heights.filter((y) => Math.abs(y - (best.k + 0.5) * STEP) < 1.5 * STEP);
  return near.reduce((sum, y) => sum + y, 0) / near.length;
}
