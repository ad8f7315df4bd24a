import type { Alcove } from '../alcove';
import type { Panel } from '../panel';
import { extent } from '../range';
import { endsAt } from './sheetSections';
import type { Pivot, Station } from './sweep';

const LEVELS = 9;

/**
 * Room on each side, mm, of a panel that is turned about a level line along the back wall: its upright edges' points at
 * each station against the side walls where they then are. Infinite where none is between the walls.
 */
export function edgesPass(alcove: Alcove, panel: Panel, stations: readonly Station[], pivot: Pivot): number {
  const [bottom, top] = extent(panel.outline, 1);
  const sign = pivot.first === 'low' ? 1 : -1;
  let least = Number.POSITIVE_INFINITY;
  for (const { angle, advance, shift } of stations) {
    const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
    let [left, right] = [Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY];
    for (let k = 1; k < LEVELS; k++) {
      const v = bottom + ((top - bottom) * k) / LEVELS;
      const { from, to } = endsAt(panel, 1, v);
      const s = sign * (v - pivot.across);
      for (const off of [0, panel.thickness]) {
        const y = pivot.across + shift + sign * (s * cos - off * sin);
        const z = pivot.depth + advance + s * sin + off * cos;
        if (z < alcove.front.left.value(0, y)) left = Math.min(left, from - alcove.left.value(z, y));
        if (z < alcove.front.right.value(0, y)) right = Math.min(right, alcove.right.value(z, y) - to);
      }
    }
    least = Math.min(least, (left + right) / 2);
  }
  return least;
}
