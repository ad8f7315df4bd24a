import { exactOf, product, rounded } from './exact';
import type { SoldLength } from './soldLength';

/** What a line is charged as, and so by which tax. */
export type PriceGroup = 'materials' | 'labour' | 'other';

/** `minute`: of one person, charged by the hour; `sum`: a flat amount */
export type PriceUnit = 'sheet' | SoldLength | 'piece' | 'pack' | 'minute' | 'sum';

/** One line of a price; amounts in minor units of the currency. */
export interface PriceLine {
  id: string;
  group: PriceGroup;
  label: string;
  /** to what `quantityStep` says */
  quantity: number;
  unit: PriceUnit;
  /** for one unit, an hour where the unit is `minute`; null: the price list has none */
  each: number | null;
  /** null where it has no price */
  amount: number | null;
}

/** Metres and feet are charged to the hundredth, minutes and all else whole. */
const STEPS_PER_UNIT: Record<PriceUnit, number> = {
  sheet: 1,
  foot: 100,
  metre: 100,
  piece: 1,
  pack: 1,
  minute: 1,
  sum: 1,
};
const UNITS_PER_PRICE: Record<PriceUnit, bigint> = {
  sheet: 1n,
  foot: 1n,
  metre: 1n,
  piece: 1n,
  pack: 1n,
  minute: 60n,
  sum: 1n,
};

/** A line with its quantity rounded to its step, a half up, and its amount to the minor unit, a half up. */
export function priceLine(
  id: string,
  group: PriceGroup,
  label: string,
  [quantity, unit]: readonly [number, PriceUnit],
  each: number | undefined,
): PriceLine {
  const steps = STEPS_PER_UNIT[unit];
  const counted = Math.round(quantity * steps);
  const amount =
    each === undefined
      ? null
      : rounded(
          product(exactOf(counted), exactOf(each), {
            numerator: 1n,
            denominator: BigInt(steps) * UNITS_PER_PRICE[unit],
          }),
        );
  return { id, group, label, quantity: counted / steps, unit, each: each ?? null, amount };
}
