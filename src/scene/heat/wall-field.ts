import { type Result, type WallName, Z_95 } from '../../core';
import { surfaceThrough } from '../geometry';

/** What deviations are from: the wall's best plumb plane, or its best plane of any lean. */
export type Reference = 'plumb' | 'flat';

/** A wall's deviation over its panelled area, mm, towards the room positive. */
export interface WallField {
  at: readonly [from: number, to: number];
  height: readonly [from: number, to: number];
  deviation(at: number, height: number): number;
  /** 95 % half-width */
  half(at: number, height: number): number;
  /** a part of its shape rests on a prior alone */
  assumed: boolean;
  highest: Spot;
  lowest: Spot;
}

export interface Spot {
  at: number;
  height: number;
  value: number;
  half: number;
}

const shapes: Record<Reference, readonly string[]> = {
  plumb: ['plumb', 'bowUp', 'bowAcross', 'twist'],
  flat: ['bowUp', 'bowAcross', 'twist'],
};

/** Bilinear between the model's grid points. */
export function wallField(
  { walls, adjustment }: Pick<Result, 'walls' | 'adjustment'>,
  wall: WallName,
  reference: Reference,
): WallField {
  const { at, height, [reference]: field } = walls[wall].deviation;
  const value = surfaceThrough(height, at, field.value);
  const sd = surfaceThrough(height, at, field.sd);
  const spots = field.value.flatMap((row, i) =>
    row.map((each, j): Spot => ({ at: at[j]!, height: height[i]!, value: each, half: Z_95 * field.sd[i]![j]! })),
  );
  const most = (better: (a: Spot, b: Spot) => boolean) =>
    spots.reduce((best, spot) => (better(spot, best) ? spot : best));
  return {
    at: [at[0]!, at.at(-1)!],
    height: [height[0]!, height.at(-1)!],
    deviation: (a, h) => value(h, a),
    half: (a, h) => Z_95 * sd(h, a),
    assumed: shapes[reference].some((part) =>
      adjustment.parameters.some(({ name, assumed }) => assumed && name === `${wall}.${part}`),
    ),
    highest: most((a, b) => a.value > b.value),
    lowest: most((a, b) => a.value < b.value),
  };
}
