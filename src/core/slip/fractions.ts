import { MM_PER_INCH } from '../length';

const SIXTEENTHS = 16;

/**
 * Lengths whose inch fraction is easily taken for this one's, mm: a digit of the sixteenths dropped or added
 * (3/16 and 13/16), eighths taken for sixteenths (5/16 and 5/8), the fraction counted from the far end of the inch.
 */
export function otherFractions(mm: number): number[] {
  const sixteenths = Math.round((mm / MM_PER_INCH) * SIXTEENTHS);
  const whole = Math.floor(sixteenths / SIXTEENTHS);
  const parts = sixteenths - whole * SIXTEENTHS;
  if (parts === 0) return [];
  const others = new Set([parts + 10, parts - 10, 2 * parts, parts / 2, SIXTEENTHS - parts]);
  const rest = mm - (sixteenths * MM_PER_INCH) / SIXTEENTHS;
  return [...others]
    .filter((other) => Number.isInteger(other) && other > 0 && other < SIXTEENTHS && other !== parts)
    .map((other) => ((whole * SIXTEENTHS + other) * MM_PER_INCH) / SIXTEENTHS + rest);
}
