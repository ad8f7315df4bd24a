import { formatLength, type Job, type Joint, type MaterialLine } from '../../core';

type Input = MaterialLine['inputs'][number];

/** What closes a joint. */
export const fillerWords: Record<Joint['filler'], string> = {
  sealant: 'sealant (wet)',
  caulk: 'paintable caulk (room side)',
};

/** A figure that a quantity follows from, with its unit. */
export function inputAmount({ value, unit }: Input, { display }: Pick<Job, 'display'>): string {
  if (unit === 'mm') return formatLength(value, { unit: display });
  if (unit === 'share') return `${Math.round(100 * value)} %`;
  if (unit === 'mm²') return `${(value / 1e6).toFixed(2)} m²`;
  return `${Math.round(value)}${unit === 'mL' ? ' mL' : ''}`;
}
