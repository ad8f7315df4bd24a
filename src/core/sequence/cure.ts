/** Temperature at which products commonly state their cure, °C. */
const STATED_AT = 21;

/**
 * Cure time at another temperature: doubled for every 10 °C colder, halved for every 10 °C warmer (common practice, no
 * source; the product's own sheet goes first).
 */
export const cureTime = (hours: number, temperature: number): number => hours * 2 ** ((STATED_AT - temperature) / 10);
