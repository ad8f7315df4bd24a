import { Matrix, solve } from 'ml-matrix';
import type { Field } from './field';
import type { Heights } from './heights';
import { medianOfBins } from './medianOfBins';

/** Tukey's biweight gives 95 % efficiency at this many standard deviations. */
const CUT = 4.685;
/** 1.4826 times the median of absolute deviations is a normal distribution's standard deviation. */
const NORMAL = 1.4826;
/** Deviations are counted in so many steps of the reach to find their median. */
const STEPS = 512;
const LEAST_POINTS = 20;

export interface RobustField {
  field: Field;
  /** spread of what was fitted about the field, mm */
  noise: number;
}

export interface RobustFieldOptions {
  /** farther from the field than this nothing counts, mm, narrowing from fit to fit */
  within: readonly number[];
  start: Field;
  /** spread that is taken at least, mm */
  leastNoise?: number;
  /** quadratic coefficients are held near 0 with this standard deviation, mm/m² */
  bowSd?: number;
}

/**
 * Height field through points with most of them right: iterated weighted least squares with Tukey's biweight (Beaton and
 * Tukey 1974), the spread from the median of absolute deviations; from a start that lies within the first reach.
 * Null where too few points are within reach.
 */
export function robustField(
  heights: Heights,
  { within, start, leastNoise = 0.3, bowSd = 20 }: RobustFieldOptions,
): RobustField | null {
  const off = new Float64Array(heights.count);
  const bins = new Uint32Array(STEPS + 1);
  let field = start;
  let noise = leastNoise;
  for (const reach of within) {
    const used = deviations(heights, field, reach, off, bins);
    if (used < LEAST_POINTS) return null;
    noise = Math.max(leastNoise, (NORMAL * medianOfBins(bins, used) * reach) / STEPS);
    field = weightedFit(heights, off, Math.min(reach, CUT * noise), noise, bowSd);
  }
  return { field, noise };
}

/** Writes heights less the field, counts those within reach by their size in steps, and gives how many there are. */
function deviations(
  { count, a, b, h }: Heights,
  c: Field,
  reach: number,
  off: Float64Array,
  bins: Uint32Array,
): number {
  bins.fill(0);
  const [c0, c1, c2, c3, c4, c5] = [c[0]!, c[1]!, c[2]!, c[3]!, c[4]!, c[5]!];
  let used = 0;
  for (let i = 0; i < count; i++) {
    const u = a[i]! * 1e-3;
    const v = b[i]! * 1e-3;
    const misfit = h[i]! - 1e3 * (c0 + u * (c1 + c3 * v + c4 * u) + v * (c2 + c5 * v));
    off[i] = misfit;
    const size = Math.abs(misfit);
    if (size > reach) continue;
    bins[((size * STEPS) / reach) | 0]! += 1;
    used++;
  }
  return used;
}

/** Coefficients with Tukey's weights, from the sums of the products of 1, u, v, uv, u², v²: fifteen differ. */
function weightedFit({ count, a, b, h }: Heights, off: Float64Array, cut: number, noise: number, bowSd: number): Field {
  let [s00, s10, s01, s20, s11, s02] = [0, 0, 0, 0, 0, 0];
  let [s30, s21, s12, s03] = [0, 0, 0, 0];
  let [s40, s31, s22, s13, s04] = [0, 0, 0, 0, 0];
  let [h0, h1, h2, h3, h4, h5] = [0, 0, 0, 0, 0, 0];
  const scale = 1 / (cut * cut);
  for (let i = 0; i < count; i++) {
    const t = 1 - off[i]! * off[i]! * scale;
    if (!(t > 0)) continue;
    const w = t * t;
    const u = a[i]! * 1e-3;
    const v = b[i]! * 1e-3;
    const [wu, wv] = [w * u, w * v];
    const [wuu, wuv, wvv] = [wu * u, wu * v, wv * v];
    const wh = w * h[i]!;
    s00 += w;
    s10 += wu;
    s01 += wv;
    s20 += wuu;
    s11 += wuv;
    s02 += wvv;
    s30 += wuu * u;
    s21 += wuu * v;
    s12 += wuv * v;
    s03 += wvv * v;
    s40 += wuu * u * u;
    s31 += wuu * u * v;
    s22 += wuu * v * v;
    s13 += wuv * v * v;
    s04 += wvv * v * v;
    h0 += wh;
    h1 += wh * u;
    h2 += wh * v;
    h3 += wh * u * v;
    h4 += wh * u * u;
    h5 += wh * v * v;
  }
  const normal = new Matrix([
    [s00, s10, s01, s11, s20, s02],
    [s10, s20, s11, s21, s30, s12],
    [s01, s11, s02, s12, s21, s03],
    [s11, s21, s12, s22, s31, s13],
    [s20, s30, s21, s31, s40, s22],
    [s02, s12, s03, s13, s22, s04],
  ]);
  const held = (noise / bowSd) ** 2;
  for (let p = 0; p < 6; p++) normal.set(p, p, normal.get(p, p) + (p < 3 ? 1e-9 * noise ** 2 : held));
  const solved = solve(normal, Matrix.columnVector([h0, h1, h2, h3, h4, h5])).to1DArray();
  return Float64Array.from(solved, (each) => each * 1e-3);
}
