import { AXES, type SurfaceName } from './axes';
import { consensusPlane } from './consensus';
import type { Facets } from './facets';
import { type Field, fieldAt } from './field';
import { addHeight, roomForHeights } from './heights';
import { type RobustField, robustField } from './robustField';

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
  const back = wallField(facets, 'back', 0, -1, random, { from: -half - NEAR, to: half + NEAR });
  const left = wallField(facets, 'left', -half, -1, random, { from: 0, to: DEPTH });
  const right = wallField(facets, 'right', half, 1, random, { from: 0, to: DEPTH });
  return back && left && right && { back, left, right };
}

function wallField(
  { count, middles, normals }: Facets,
  wall: WallLabel,
  at: number,
  behind: 1 | -1,
  random: () => number,
  along: { from: number; to: number },
): RobustField | null {
  const [i, j, k] = AXES[wall];
  const heights = roomForHeights();
  for (let f = 0; f < 3 * count; f += 3) {
    if (Math.abs(normals[f + k]!) < ALONG || Math.abs(middles[f + k]! - at) > NEAR) continue;
    if (middles[f + i]! > along.from && middles[f + i]! < along.to)
      addHeight(heights, middles[f + i]!, middles[f + j]!, middles[f + k]!);
  }
  const start = consensusPlane(heights, behind, random);
  return start && robustField(heights, { start, within: [25, 18, 12, 10, 10] });
}

/** A box of places, mm: what lies on or beyond its sides is left out. */
export interface Box {
  x: [number, number];
  y: [number, number];
  z: [number, number];
}

/** A surface's field sharpened on the points of the sample themselves, those in the box. */
export function sharpened(sample: Float64Array, name: SurfaceName, field: Field, { x, y, z }: Box): RobustField | null {
  const [i, j, k] = AXES[name];
  const heights = roomForHeights();
  for (let p = 0; p < sample.length; p += 3) {
    const h = sample[p + k]!;
    if (Math.abs(h - fieldAt(field, sample[p + i]!, sample[p + j]!)) > NEAR_FIELD) continue;
    const [px, py, pz] = [sample[p]!, sample[p + 1]!, sample[p + 2]!];
    if (px > x[0] && px < x[1] && py > y[0] && py < y[1] && pz > z[0] && pz < z[1])
      addHeight(heights, sample[p + i]!, sample[p + j]!, h);
  }
  return robustField(heights, { start: field, within: [15, 12, 12] });
}

/** Points count for sharpening within this of the field, mm. */
const NEAR_FIELD = 20;
