import { formatLength, type Job, type Joint, type MaterialLine } from '../../core';

type Input = MaterialLine['inputs'][number];

/** What closes a joint. */
export const fillerWords: Record<Joint['filler'], string> = {
  sealant: 'sealant (wet)',
  caulk: 'paintable caulk (room side)',
};

/** Width of a joint along it, `1/16" to 3/32"`; a closed joint takes a fillet only. */
export function jointWidthWords({ widths }: Pick<Joint, 'widths'>, { display }: Pick<Job, 'display'>): string {
  const all = widths.map(([, width]) => width);
  const [least, most] = [Math.max(0, Math.min(...all)), Math.max(0, ...all)];
  if (most === 0) return 'fillet only';
  const text = (mm: number): string => formatLength(mm, { unit: display, denominator: 32 });
  return text(least) === text(most) ? text(most) : `${text(least)} to ${text(most)}`;
}

/** A figure that a quantity follows from, with its unit. */
export function inputAmount({ value, unit }: Input, { display }: Pick<Job, 'display'>): string {
  if (unit === 'mm') return formatLength(value, { unit: display });
  if (unit === 'share') return `${Math.round(100 * value)} %`;
  if (unit === 'mm²') return `${(value / 1e6).toFixed(2)} m²`;
  return `${Math.round(value)}${unit === 'mL' ? ' mL' : ''}`;
}
