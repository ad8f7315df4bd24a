import type { Sheet } from '../job-file';
import { extent } from '../range';
import type { EdgeName, Point } from './panel';

/** The rectangle of the sheet laid on the panel, sheet coordinates, mm. */
export interface LaidSheet {
  left: number;
  right: number;
  bottom: number;
  top: number;
}

/** Which edges bound the panel at low u and at high u. */
export interface SideNames {
  lower: EdgeName;
  upper: EdgeName;
}

/**
 * Lays the sheet over the flat outline: against a kept factory edge, else centred. `left` and `right` are at low and
 * high u.
 */
export function laySheet(
  outline: readonly Point[],
  sheet: Pick<Sheet, 'width' | 'height'>,
  kept: readonly EdgeName[],
  { lower, upper }: SideNames,
): LaidSheet {
  const [left, right] = place(extent(outline, 0), sheet.width, kept.includes(lower), kept.includes(upper));
  const [bottom, top] = place(extent(outline, 1), sheet.height, kept.includes('bottom'), kept.includes('top'));
  return { left, right, bottom, top };
}

function place([low, high]: [number, number], size: number, keepLow: boolean, keepHigh: boolean): [number, number] {
  if (keepLow) return [low, low + size];
  if (keepHigh) return [high - size, high];
  const middle = (low + high) / 2;
  return [middle - size / 2, middle + size / 2];
}
