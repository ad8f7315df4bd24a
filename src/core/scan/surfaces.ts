import { AXES, type SurfaceName } from './axes';
import { consensusPlane } from './consensus';
import type { Facets } from './facets';
import { type Field, fieldAt, type RobustField, robustField } from './field';

export type WallLabel = 'back' | 'left' | 'right';

/** Walls and rim as quadratic height fields in the wall frame, with the spread of the points about them. */
export interface Surfaces {
  back: RobustField;
  left: RobustField;
  right: RobustField;
  rim: RobustField | null;
  /** heights, mm; null where none was found */
  floor: number | null;
  ceiling: number | null;
}

/** Facets count for a surface within this of where it was found first, mm. */
const NEAR = 70;
const ALONG = Math.cos((15 * Math.PI) / 180);
/** Deeper than this from the back wall side walls are not looked at for their first shape, mm. */
const DEPTH = 900;

/** The walls from their facets: consensus plane, then a robust quadratic field. Null where a wall gives no shape. */
export function wallFields(facets: Facets, half: number, random: () => number): Record<WallLabel, RobustField> | null {
  const back = wallField(facets, 'back', 0, -1, random, ([x]) => Math.abs(x) < half + NEAR);
  const left = wallField(facets, 'left', -half, -1, random, ([, , z]) => z > 0 && z < DEPTH);
  const right = wallField(facets, 'right', half, 1, random, ([, , z]) => z > 0 && z < DEPTH);
  return back && left && right && { back, left, right };
}

function wallField(
  { count, middles, normals }: Facets,
  wall: WallLabel,
  at: number,
  behind: 1 | -1,
  random: () => number,
  within: (middle: [number, number, number]) => boolean,
): RobustField | null {
  const [i, j, k] = AXES[wall];
  const [a, b, h]: [number[], number[], number[]] = [[], [], []];
  for (let f = 0; f < 3 * count; f += 3) {
    if (Math.abs(normals[f + k]!) < ALONG || Math.abs(middles[f + k]! - at) > NEAR) continue;
    if (!within([middles[f]!, middles[f + 1]!, middles[f + 2]!])) continue;
    a.push(middles[f + i]!);
    b.push(middles[f + j]!);
    h.push(middles[f + k]!);
  }
  const start = consensusPlane(a, b, h, behind, random);
  return start && robustField(a, b, h, { start, within: [25, 18, 12, 10, 10] });
}

/** Wall fields sharpened on the points of the sample themselves. */
export function sharpened(
  sample: Float64Array,
  name: SurfaceName,
  field: Field,
  within: (p: [number, number, number]) => boolean,
): RobustField | null {
  const [i, j, k] = AXES[name];
  const [a, b, h]: [number[], number[], number[]] = [[], [], []];
  for (let p = 0; p < sample.length; p += 3) {
    const [s, t, v] = [sample[p + i]!, sample[p + j]!, sample[p + k]!];
    if (Math.abs(v - fieldAt(field, s, t)) > 20 || !within([sample[p]!, sample[p + 1]!, sample[p + 2]!])) continue;
    a.push(s);
    b.push(t);
    h.push(v);
  }
  return robustField(a, b, h, { start: field, within: [15, 12, 12] });
}
