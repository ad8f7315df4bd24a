import type { Point } from '../../core';
import type { Place } from './drawing';
import { line, type Polyline } from './shape';

/**
 * A stroke square to an edge's general direction.
 * @param inside share of it that lies on the inner side of the edge
 */
export function markTick(place: Place, [x, y]: Point, tick: number, inside: number): Polyline {
  const inward = place === 'left' || place === 'bottom' ? 1 : -1;
  const [out, into] = [-inward * tick * (1 - inside), inward * tick * inside];
  return place === 'left' || place === 'right'
    ? line('mark', [x + out, y], [x + into, y])
    : line('mark', [x, y + out], [x, y + into]);
}
