import { crowdsOf } from './crowds';
import type { Facets } from './facets';
import { fieldAt } from './field';
import { addHeight, roomForHeights } from './heights';
import { type RobustField, robustField } from './robustField';

/** The wall beside the opening: z over (x, y), and where its near end is to be found. */
export type Flank = RobustField;

const ALONG = Math.cos((15 * Math.PI) / 180);
/** A flank is looked for within this beyond its side wall, mm. */
const BEYOND = [15, 500] as const;
const OUT = [300, 1800] as const;
const STEP = 10;
const LEAST_FACETS = 25;

/**
 * The wall that a side wall turns into at the opening, where the scan shows it: its near end is the front edge. The
 * nearest crowd of facets that face the room beside the alcove. Null where none shows.
 */
export function flankOf({ count, middles, normals }: Facets, side: RobustField, outward: 1 | -1): Flank | null {
  const heights = roomForHeights();
  for (let f = 0; f < 3 * count; f += 3) {
    if (Math.abs(normals[f + 2]!) < ALONG) continue;
    const [px, py, pz] = [middles[f]!, middles[f + 1]!, middles[f + 2]!];
    const beyond = outward * (px - fieldAt(side.field, pz, py));
    if (beyond < BEYOND[0] || beyond > BEYOND[1] || pz < OUT[0] || pz > OUT[1]) continue;
    addHeight(heights, px, py, pz);
  }
  const { steps, crowd } = crowdsOf(heights.h.subarray(0, heights.count), STEP);
  const nearest = steps.sort((a, b) => a - b).find((k) => crowd(k) >= LEAST_FACETS && crowd(k) >= crowd(k + 1));
  if (nearest === undefined) return null;
  const start = Float64Array.of((nearest + 0.5) * STEP * 1e-3, 0, 0, 0, 0, 0);
  return robustField(heights, { start, within: [40, 25, 12, 10], bowSd: 3 });
}

/** How far out the side walls' own facets reach, mm. */
export function depthOf({ count, middles, normals }: Facets, sides: readonly RobustField[]): number {
  const out: number[] = [];
  for (let f = 0; f < 3 * count; f += 3) {
    if (Math.abs(normals[f]!) < ALONG) continue;
    const near = sides.some(
      ({ field }) => Math.abs(middles[f]! - fieldAt(field, middles[f + 2]!, middles[f + 1]!)) < 15,
    );
    if (near && middles[f + 2]! > 0) out.push(middles[f + 2]!);
  }
  out.sort((a, b) => a - b);
  return out[Math.floor(0.98 * (out.length - 1))] ?? 0;
}
