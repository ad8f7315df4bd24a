import { type Result, type WallName, Z_95 } from '../../core';
import { surfaceThrough } from '../geometry';
import type { Spot, WallField } from './wall-field';

/** How much thicker than the even bed the bed behind a panel is, as a wall's distance away from its sheet, mm, negative. */
export function bedField({ bedding }: Pick<Result, 'bedding'>, wall: WallName, even: number): WallField {
  const { at, height, value, sd } = bedding[wall].map;
  const off = value.map((row) => row.map((each) => even - each));
  const through = surfaceThrough(height, at, off);
  const half = surfaceThrough(height, at, sd);
  const spots = off.flatMap((row, i) =>
    row.map((each, j): Spot => ({ at: at[j]!, height: height[i]!, value: each, half: Z_95 * sd[i]![j]! })),
  );
  return {
    at: [at[0]!, at.at(-1)!],
    height: [height[0]!, height.at(-1)!],
    deviation: (a, h) => through(h, a),
    half: (a, h) => Z_95 * half(h, a),
    assumed: false,
    highest: spots.reduce((best, spot) => (spot.value > best.value ? spot : best)),
    lowest: spots.reduce((best, spot) => (spot.value < best.value ? spot : best)),
  };
}
