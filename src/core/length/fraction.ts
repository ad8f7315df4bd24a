import { mixedNumber } from './formatLength';
import { type Ratio, ratio } from './ratio';
import { quoted, type Read, read, refuse } from './refusal';
import type { FractionToken } from './token';

/** Finest fraction read, as on a machinist's rule. */
export const LARGEST_DENOMINATOR = 64;

/**
 * Takes a proper fraction with any denominator from 1 to 64. One that makes a whole or more is refused, since it is
 * most often a mixed number whose space was missed: `5913/16`.
 * @param whole the number that stands before it
 * @param text how it was written
 */
export function readFraction({ above, below }: FractionToken, whole: number | null, text: string): Read<Ratio> {
  if (below === 0) return refuse(`${quoted(text)} divides by 0; write a fraction such as 13/16`);
  if (below > LARGEST_DENOMINATOR) {
    return refuse(`${quoted(text)} is finer than 1/${LARGEST_DENOMINATOR}; write a coarser fraction or a decimal`);
  }
  if (above < below) return read(ratio(above, below));
  const carried = mixedNumber((whole ?? 0) * below + above, below);
  const spaced = whole === null ? withSpace(above, below) : null;
  return refuse(
    `${quoted(text)} is no less than a whole; write ${carried}${spaced ? `, or ${spaced} if a space is missing` : ''}`,
  );
}

/** `5913/16` as `59 13/16`: the longest end of the figures that makes a proper fraction. */
function withSpace(above: number, below: number): string | null {
  const figures = String(above);
  for (let cut = 1; cut < figures.length; cut++) {
    const end = figures.slice(cut);
    if (!end.startsWith('0') && Number(end) < below) return `${figures.slice(0, cut)} ${end}/${below}`;
  }
  return null;
}
