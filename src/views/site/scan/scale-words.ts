import { Z_95 } from '../../../core';
import type { DraftReading } from '../../../job';

/** Kinds that are lengths between surfaces, which a wrong scale would make too long or too short. */
const lengths: readonly DraftReading['kind'][] = ['tape-to-corner', 'span', 'depth', 'diagonal', 'square'];

/** What settles the scale of a scan. */
export function scaleWords(readings: readonly Pick<DraftReading, 'kind' | 'off'>[], scaleSd: number): string {
  const count = readings.filter(({ kind, off }) => !off && lengths.includes(kind)).length;
  if (count === 0) {
    return `No tape reading corrects its scale yet, which scanners get wrong by up to ±${(Z_95 * scaleSd).toFixed(0)} mm per m: take one from wall to wall.`;
  }
  return count === 1
    ? 'One tape reading corrects its scale. A second would check the first.'
    : `${count} tape readings correct its scale.`;
}
