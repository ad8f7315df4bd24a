import { medianOfBins } from './medianOfBins';

/** Heights off a surface are counted from −REACH to REACH in bins this wide, mm. */
const REACH = 24;
const BIN = 0.75;
export const BINS = (2 * REACH) / BIN;
const NORMAL = 1.4826;
/** A mean takes what lies within so many spreads of the median, never less than this, mm. */
const WITHIN = 2.6;
const LEAST_WITHIN = 0.9;
/** Standard deviation of a normal distribution cut at 2.6 spreads, as a share of the whole one's. */
const CUT_SPREAD = 0.955;

/** Bin of a height off the surface, or −1 where it lies beyond all. */
export const binOf = (off: number): number => {
  const bin = Math.floor((off + REACH) / BIN);
  return bin >= 0 && bin < BINS ? bin : -1;
};

export interface RobustMean {
  mean: number;
  /** spread of a single point, mm */
  spread: number;
  count: number;
}

/**
 * Mean of what lies within 2.6 spreads of the median, evenly on both sides, so that points beyond on one side do not draw
 * it; the spread from the median of absolute deviations. Median and window go by bins, the mean by the points' own sums.
 * @param counts, sums of all cells, BINS each
 * @param from where this cell's begin
 */
export function robustMean(counts: Uint32Array, sums: Float64Array, from: number): RobustMean | null {
  const total = totalOf(counts, from);
  if (total === 0) return null;
  const median = -REACH + BIN * medianOfBins(counts, total, from, BINS);
  const spread = Math.max(NORMAL * medianDeviation(counts, from, median, total), BIN / 4);
  return meanNear(counts, sums, from, median, Math.max(WITHIN * spread, LEAST_WITHIN));
}

/** Steps from a mean to that of what lies evenly about it; they settle in three or four. */
const STEPS = 4;

/**
 * The mean about which the points crowd: from their robust mean on, each time of what lies within so many of the usual
 * cell's spreads (mean shift; Comaniciu and Meer 2002), so that a tail on one side, as of an edge, does not draw it.
 * Null where less than most of the cell's points lie there: it shows two things.
 */
export function crowdedMean(
  counts: Uint32Array,
  sums: Float64Array,
  from: number,
  usual: number,
  robust: RobustMean,
): RobustMean | null {
  const total = totalOf(counts, from);
  let found: RobustMean | null = robust;
  const reach = Math.max(WITHIN * usual, LEAST_WITHIN);
  for (let step = 0; step < STEPS && found !== null; step++) found = meanNear(counts, sums, from, found.mean, reach);
  return found !== null && found.count >= MOSTLY * total ? found : null;
}

/** At least this share of a cell's points lies about its mean: all but a few of a normal distribution do. */
const MOSTLY = 0.8;

/** Mean of the bins whose middles lie within reach of a centre. */
function meanNear(
  counts: Uint32Array,
  sums: Float64Array,
  from: number,
  centre: number,
  reach: number,
): RobustMean | null {
  let [count, sum, square] = [0, 0, 0];
  for (let k = 0; k < BINS; k++) {
    const n = counts[from + k]!;
    if (n === 0 || Math.abs(-REACH + (k + 0.5) * BIN - centre) > reach) continue;
    const mean = sums[from + k]! / n;
    count += n;
    sum += sums[from + k]!;
    square += n * (mean - centre) ** 2;
  }
  if (count === 0) return null;
  const mean = sum / count;
  const within = Math.sqrt(Math.max(0, square / count - (mean - centre) ** 2)) / CUT_SPREAD;
  return { mean, spread: Math.max(within, 0.05), count };
}

function totalOf(counts: Uint32Array, from: number): number {
  let total = 0;
  for (let k = from; k < from + BINS; k++) total += counts[k]!;
  return total;
}

/** Median distance from the median: the half-width of the window about it that holds half of all. */
function medianDeviation(counts: Uint32Array, from: number, median: number, total: number): number {
  let [low, high] = [0, REACH];
  for (let step = 0; step < 20; step++) {
    const half = (low + high) / 2;
    if (heldWithin(counts, from, median - half, median + half) < total / 2) low = half;
    else high = half;
  }
  return (low + high) / 2;
}

/** Count between two heights, bins that they cut through shared out evenly. */
function heldWithin(counts: Uint32Array, from: number, low: number, high: number): number {
  const [a, b] = [(low + REACH) / BIN, (high + REACH) / BIN];
  let held = 0;
  for (let k = Math.max(0, Math.floor(a)); k < Math.min(BINS, Math.ceil(b)); k++) {
    held += counts[from + k]! * (Math.min(b, k + 1) - Math.max(a, k));
  }
  return held;
}
