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

/** Facets that face along an axis: their place on it, and on the other level axis, mm. */
interface Placed {
  at: Float64Array;
  along: Float64Array;
}

/**
 * The best closed end: of all pairs of planes that face each other and planes across between them, the one on which all
 * three walls gather most facets (geometric mean), less what shows behind them, where no wall lets anything show.
 */
export function findWalls({ count, middles, normals }: Facets): WallBox | null {
  const facing = { 0: facingAlong(0), 2: facingAlong(2) };
  const planes = { 0: planesOf(facing[0].at), 2: planesOf(facing[2].at) };

  function facingAlong(axis: 0 | 2): Placed {
    const placed = { at: new Float64Array(count), along: new Float64Array(count) };
    let n = 0;
    for (let i = 0; i < 3 * count; i += 3) {
      if (Math.abs(normals[i + axis]!) <= ALONG) continue;
      placed.at[n] = middles[i + axis]!;
      placed.along[n++] = middles[i + 2 - axis]!;
    }
    return { at: placed.at.subarray(0, n), along: placed.along.subarray(0, n) };
  }
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
            const score = scoreOf(box, facing);
            if (score > (best?.score ?? 0)) best = { score, box };
          }
        }
      }
    }
  }
  return best !== null && reachesAcross(best.box, facing) ? best.box : null;
}

/** Whether the back wall reaches over half of the width and the side walls stand out from it, as a ball's sides do not. */
function reachesAcross({ axis, into, back, sides }: WallBox, facing: Record<0 | 2, Placed>): boolean {
  const onBack = alongThose(facing[axis], back).filter((at) => at > sides[0] && at < sides[1]);
  if (mostOf(onBack) < (sides[1] - sides[0]) / 2) return false;
  return sides.every((side) => {
    const out = alongThose(facing[axis === 0 ? 2 : 0], side).map((at) => into * (at - back));
    return mostOf(out.filter((each) => each > 0 && each < DEPTH)) > LEAST_OUT;
  });
}

/** Where along a plane the facets stand that lie on it. */
const alongThose = ({ at, along }: Placed, plane: number): Float64Array =>
  along.filter((_, i) => Math.abs(at[i]! - plane) < REACH);

/** Stretch that nine of ten values lie on. */
function mostOf(values: Float64Array): number {
  const sorted = values.toSorted();
  return (sorted[Math.floor(0.95 * sorted.length)] ?? 0) - (sorted[Math.floor(0.05 * sorted.length)] ?? 0);
}

function scoreOf({ axis, into, back, sides: [first, second] }: WallBox, facing: Record<0 | 2, Placed>): number {
  const across = axis === 0 ? 2 : 0;
  const on = { back: 0, first: 0, second: 0, behind: 0 };
  const facingBack = facing[axis];
  for (let i = 0; i < facingBack.at.length; i++) {
    const side = facingBack.along[i]!;
    if (side < first || side > second) continue;
    const out = into * (facingBack.at[i]! - back);
    if (Math.abs(out) < REACH) on.back++;
    else if (-out > BEHIND[0] && -out < BEHIND[1]) on.behind++;
  }
  const facingSides = facing[across];
  for (let i = 0; i < facingSides.at.length; i++) {
    const out = into * (facingSides.along[i]! - back);
    if (out < 0 || out > DEPTH) continue;
    const side = facingSides.at[i]!;
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
function planesOf(places: Float64Array): number[] {
  const at = places.toSorted();
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
