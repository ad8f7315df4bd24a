import type { DisplayUnit } from '../length';
import { exact, exactOf, product, rounded } from './exact';

/** What trim and strips are sold by: the foot where lengths are told in inches, else the metre. */
export type SoldLength = 'foot' | 'metre';

export const soldLength = (display: DisplayUnit): SoldLength => (display === 'in' ? 'foot' : 'metre');

/** Exactly 304.8 mm (international foot) and 1000 mm. */
export const MM_OF: Record<SoldLength, number> = { foot: 304.8, metre: 1000 };

/**
 * Price of one length sold from the price a metre, in whole minor units. A price that was entered by the foot and kept
 * by the metre comes back as it was: keeping it errs by half a minor unit at most, which is 0.15 of one by the foot.
 */
export const priceSold = (metre: number, by: SoldLength): number =>
  rounded(product(exactOf(metre), exactOf(MM_OF[by]), exact(1n, 1000n)));

/** Price a metre, in whole minor units, from the price of one length sold. */
export const priceAMetre = (each: number, by: SoldLength): number => Math.round((each * MM_OF.metre) / MM_OF[by]);
