import type { Scan } from '../job-file';
import type { SurfaceName } from './axes';
import { fieldAt, median } from './field';
import { addHeight, type Heights, roomForHeights } from './heights';
import { type RobustField, robustField } from './robustField';

/** Heights are taken together over this much, mm. */
const STRETCH = 80;
/** Points of the wall beside the opening count from where its corner is no longer round to so far from it, mm. */
const BEYOND = [10, 220] as const;
const LEAST_POINTS = 12;
/** A drywall corner is no sharper than this, mm (common practice, no source). */
const CORNER_SD = 1;
/** An edge that shows over less height than this is none, mm. */
const LEAST_HEIGHT = 400;

/**
 * Front edges: where the wall beside the opening, carried on, meets the side wall, at even heights. The wall beside must
 * show; where the scan merely ends there is no edge.
 * @param beside points of the walls beside the opening: z over x and y
 */
export function frontEdges(
  beside: Heights | undefined,
  fields: Partial<Record<SurfaceName, RobustField>>,
): Scan['front'] {
  const edge = (side: 'left' | 'right'): Scan['front']['left'] => {
    const wall = fields[side];
    return wall === undefined || beside === undefined ? [] : edgeOf(near(beside, wall, side), wall);
  };
  return { left: edge('left'), right: edge('right') };
}

function near({ count, a, b, h }: Heights, wall: RobustField, side: 'left' | 'right'): Heights {
  const outward = side === 'left' ? -1 : 1;
  const kept = roomForHeights();
  for (let i = 0; i < count; i++) {
    const beyond = outward * (a[i]! - fieldAt(wall.field, h[i]!, b[i]!));
    if (beyond > BEYOND[0] && beyond < BEYOND[1]) addHeight(kept, a[i]!, b[i]!, h[i]!);
  }
  return kept;
}

function edgeOf(points: Heights, wall: RobustField): Scan['front']['left'] {
  const { count, a, b, h } = points;
  if (count < 5 * LEAST_POINTS) return [];
  const start = Float64Array.of(median(h.subarray(0, count)) * 1e-3, 0, 0, 0, 0, 0);
  const flank = robustField(points, { start, within: [60, 30, 15, 12], bowSd: 3 });
  if (flank === null) return [];
  const stretches = new Map<number, number[]>();
  for (let i = 0; i < count; i++) {
    const off = h[i]! - fieldAt(flank.field, a[i]!, b[i]!);
    if (Math.abs(off) > 3 * flank.noise + 1) continue;
    const k = Math.floor(b[i]! / STRETCH);
    const held = stretches.get(k);
    if (held === undefined) stretches.set(k, [off]);
    else held.push(off);
  }
  const edge = [...stretches]
    .filter(([, off]) => off.length >= LEAST_POINTS)
    .sort(([m], [n]) => m - n)
    .map(([k, off]) => {
      const height = (k + 0.5) * STRETCH;
      const mean = off.reduce((sum, each) => sum + each, 0) / off.length;
      const at = (out: number): number => fieldAt(flank.field, fieldAt(wall.field, out, height), height);
      const value = at(at(flank.field[0]! * 1e3)) + mean;
      const sd = Math.hypot(CORNER_SD, flank.noise / Math.sqrt(off.length));
      return { height, value: Number(value.toFixed(2)), sd: Number(sd.toFixed(3)) };
    });
  const shown = edge.length === 0 ? 0 : edge.at(-1)!.height - edge[0]!.height;
  return shown < LEAST_HEIGHT ? [] : edge;
}
