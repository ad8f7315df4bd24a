/** One US fluid ounce in mL: 231/128 in³ exactly, the US gallon being 231 in³. */
export const ML_PER_FLUID_OUNCE = (231 / 128) * 2.54 ** 3;

/** Cartridges in common sizes, mL (common practice, no source). */
export const CARTRIDGES = { '10.1 oz': 10.1 * ML_PER_FLUID_OUNCE, '300 mL': 300, '28 oz': 28 * ML_PER_FLUID_OUNCE };

/** More than this share is never counted as lost, so that no loss asks for an endless quantity. */
const MOST_LOST = 0.95;

/** What must be there for so much to remain once a share of it is lost. */
export const beforeLoss = (remains: number, lost: number): number => remains / (1 - Math.min(lost, MOST_LOST));

/** mm³ in a mL. */
export const MM3_PER_ML = 1000;
