/** An exact fraction: money and quantities are multiplied and added without any rounding but the one that is stated. */
export interface Exact {
  numerator: bigint;
  /** above 0 */
  denominator: bigint;
}

export const exact = (numerator: bigint, denominator = 1n): Exact => ({ numerator, denominator });

/** The decimal number that a finite double is written as, exactly: 0.1 is one tenth. */
export function exactOf(value: number): Exact {
  const written = /^(-?)(\d+)(?:\.(\d+))?(?:e([+-]\d+))?$/.exec(String(value));
  if (written === null) throw new Error(`${value} is no finite number`);
  const [, sign, whole, decimals = '', exponent = '0'] = written;
  const digits = BigInt(`${sign}${whole}${decimals}`);
  const shift = Number(exponent) - decimals.length;
  return shift >= 0 ? exact(digits * 10n ** BigInt(shift)) : exact(digits, 10n ** BigInt(-shift));
}

export const product = (...factors: readonly Exact[]): Exact =>
  factors.reduce((a, b) => exact(a.numerator * b.numerator, a.denominator * b.denominator), exact(1n));

/** To the nearest whole number, a half away from zero. */
export function rounded({ numerator, denominator }: Exact): number {
  const magnitude = numerator < 0n ? -numerator : numerator;
  const whole = (2n * magnitude + denominator) / (2n * denominator);
  return Number(numerator < 0n ? -whole : whole);
}
