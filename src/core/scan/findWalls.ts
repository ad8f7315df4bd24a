import type { Facets } from './facets';

/** Where the three walls stand in the aligned frame, mm: a closed end between two walls that face each other. */
export interface WallBox {
  /** axis of the back wall's normal: 0 for x, 2 for z; side walls stand square to the other */
  axis: 0 | 2;
  /** +1 where the room lies towards growing coordinates, −1 otherwise */
  into: 1 | -1;
  back: number;
  /** the two side walls' coordinates, smaller first */
  sides: [number, number];
}

/** A facet belongs to a direction within this of it, as a cosine (12°). */
const ALONG = Math.cos((12 * Math.PI) / 180);
/** Walls are looked for in steps of this, mm; a wall gathers facets within its reach. */
const STEP = 10;
const REACH = 30;
/** Alcoves are this wide, and panelled this deep, mm. */
const WIDTH = [600, 3600] as const;
const DEPTH = 1100;
/** Nine tenths of a side wall stand on at least this much of the way out, mm. */
const LEAST_OUT = 250;
/** Nothing of the room shows within this behind a wall, mm. */
const BEHIND = [50, 450] as const;
const MOST_PLANES = 8;
/** A wall has at least this many facets. */
const LEAST_FACETS = 60;

/**
 * The best closed end: of all pairs of planes that face each other and planes across between them, the one on which all
 * three walls gather most facets (geometric mean), less what shows behind them, where no wall lets anything show.
 */
export function findWalls({ count, middles, normals }: Facets): WallBox | null {
  const facing: Record<0 | 2, number[]> = { 0: [], 2: [] };
  for (let i = 0; i < count; i++) {
    for (const axis of [0, 2] as const) if (Math.abs(normals[3 * i + axis]!) > ALONG) facing[axis].push(i);
  }
  const planes = { 0: planesOf(facing[0], middles, 0), 2: planesOf(facing[2], middles, 2) };
  let best: { score: number; box: WallBox } | null = null;
  for (const axis of [0, 2] as const) {
    const across = axis === 0 ? 2 : 0;
    for (const [k, first] of planes[across].entries()) {
      for (const second of planes[across].slice(k + 1)) {
        const width = second - first;
        if (width < WIDTH[0] || width > WIDTH[1]) continue;
        for (const back of planes[axis]) {
          for (const into of [1, -1] as const) {
            const box: WallBox = { axis, into, back, sides: [first, second] };
            const score = scoreOf(box, facing, middles);
            if (score > (best?.score ?? 0)) best = { score, box };
          }
        }
      }
    }
  }
  return best !== null && reachesAcross(best.box, facing, middles) ? best.box : null;
}

/** Whether the back wall reaches over half of the width and the side walls stand out from it, as a ball's sides do not. */
function reachesAcross(
  { axis, into, back, sides }: WallBox,
  facing: Record<0 | 2, number[]>,
  middles: Float64Array,
): boolean {
  const across = axis === 0 ? 2 : 0;
  const onBack = facing[axis].filter((i) => Math.abs(middles[3 * i + axis]! - back) < REACH);
  const alongBack = onBack.map((i) => middles[3 * i + across]!).filter((at) => at > sides[0] && at < sides[1]);
  if (mostOf(alongBack) < (sides[1] - sides[0]) / 2) return false;
  return sides.every((side) => {
    const on = facing[across].filter((i) => Math.abs(middles[3 * i + across]! - side) < REACH);
    return (
      mostOf(on.map((i) => into * (middles[3 * i + axis]! - back)).filter((out) => out > 0 && out < DEPTH)) > LEAST_OUT
    );
  });
}

/** Stretch that nine of ten values lie on. */
function mostOf(values: number[]): number {
  const sorted = Float64Array.from(values).sort();
  return (sorted[Math.floor(0.95 * sorted.length)] ?? 0) - (sorted[Math.floor(0.05 * sorted.length)] ?? 0);
}

function scoreOf(
  { axis, into, back, sides: [first, second] }: WallBox,
  facing: Record<0 | 2, number[]>,
  middles: Float64Array,
): number {
  const across = axis === 0 ? 2 : 0;
  const on = { back: 0, first: 0, second: 0, behind: 0 };
  for (const i of facing[axis]) {
    const side = middles[3 * i + across]!;
    if (side < first || side > second) continue;
    const out = into * (middles[3 * i + axis]! - back);
    if (Math.abs(out) < REACH) on.back++;
    else if (-out > BEHIND[0] && -out < BEHIND[1]) on.behind++;
  }
  for (const i of facing[across]) {
    const out = into * (middles[3 * i + axis]! - back);
    if (out < 0 || out > DEPTH) continue;
    const side = middles[3 * i + across]!;
    if (Math.abs(side - first) < REACH) on.first++;
    else if (Math.abs(side - second) < REACH) on.second++;
    else if (out < DEPTH / 2 && (within(first - side, BEHIND) || within(side - second, BEHIND))) on.behind++;
  }
  if (Math.min(on.back, on.first, on.second) < LEAST_FACETS) return 0;
  const all = on.back + on.first + on.second;
  return Math.cbrt(on.back * on.first * on.second) * Math.max(0, 1 - (2 * on.behind) / all);
}

const within = (value: number, [low, high]: readonly [number, number]): boolean => value > low && value < high;

/** Coordinates at which facets that face along the axis crowd, most crowded first. */
function planesOf(indices: number[], middles: Float64Array, axis: 0 | 2): number[] {
  const at = Float64Array.from(indices, (i) => middles[3 * i + axis]!).sort();
  if (at.length === 0) return [];
  const from = at[0]!;
  const bins = new Float64Array(Math.min(4000, Math.ceil((at.at(-1)! - from) / STEP) + 1));
  for (const value of at) bins[Math.min(bins.length - 1, Math.floor((value - from) / STEP))]! += 1;
  const crowd = (k: number): number => bins[k]! + (bins[k - 1] ?? 0) + (bins[k + 1] ?? 0);
  const peaks = Array.from(bins.keys()).filter((k) => {
    const mine = crowd(k);
    if (mine < LEAST_FACETS / 2) return false;
    for (let d = 1; d <= 3; d++) if (crowd(k - d) > mine || crowd(k + d) >= mine) return false;
    return true;
  });
  return peaks
    .sort((a, b) => crowd(b) - crowd(a))
    .slice(0, MOST_PLANES)
    .map((k) => {
      const near = at.filter((value) => Math.abs(value - from - (k + 0.5) * STEP) < 2 * STEP);
      return near.reduce((sum, value) => sum + value, 0) / near.length;
    })
    .sort((a, b) => a - b);
}
