import { MM_PER_INCH } from '../../../core';
import type { DraftReading } from '../../../job';
import type { Lengths } from '../../parts';

/** Kinds that are lengths between surfaces, which a wrong scale would make too long or too short. */
const betweenSurfaces: readonly DraftReading['kind'][] = ['tape-to-corner', 'span', 'depth', 'diagonal', 'square'];

/** An error of scale is told over so much: a metre, or a common alcove's width, mm. */
const OVER = { mm: 1000, in: 60 * MM_PER_INCH };

/**
 * What settles the scale of a scan.
 * @param scaleSd 1 sigma of the scanner's scale, mm per m
 */
export function scaleWords(
  readings: readonly Pick<DraftReading, 'kind' | 'off'>[],
  scaleSd: number,
  { unit, text, plusMinus }: Lengths,
): string {
  const count = readings.filter(({ kind, off }) => !off && betweenSurfaces.includes(kind)).length;
  if (count === 0) {
    return `No tape reading corrects its scale yet, which scanners get wrong by up to ${plusMinus((scaleSd * OVER[unit]) / 1000)} over ${text(OVER[unit])}: take one from wall to wall.`;
  }
  return count === 1
    ? 'One tape reading corrects its scale. A second would check the first.'
    : `${count} tape readings correct its scale.`;
}
