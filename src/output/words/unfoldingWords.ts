import { formatLength, type Job, type Panel } from '../../core';

/** What is left in a sheet's plane when it is laid on its wall: one line, what it means, and whether it matters. */
export interface UnfoldingWords {
  weight: 'good' | 'warn';
  head: string;
  more: string;
}

/** Strain as it is written, `0.004 %`. */
export const strainText = (strain: number): string => `${(100 * strain).toFixed(strain < 1e-3 ? 4 : 2)} %`;

export function unfoldingWords(
  { flat, name }: Pick<Panel, 'flat' | 'name'>,
  job: Pick<Job, 'display' | 'fit'>,
): UnfoldingWords {
  const { strain } = flat.unfolding;
  const text = (mm: number): string => formatLength(mm, { unit: job.display, denominator: 32 });
  if (strain === 0) {
    return {
      weight: 'good',
      head: 'A flat sheet: nothing is stretched.',
      more: 'It is not pressed into the wall’s shape, so its template is its outline as it stands.',
    };
  }
  const vs = flat.outline.map(([, v]) => v);
  const us = flat.outline.map(([u]) => u);
  const longest = Math.max(Math.max(...us) - Math.min(...us), Math.max(...vs) - Math.min(...vs));
  const change = strain * longest;
  const within = change <= job.fit.markTolerance;
  const head = `Up to ${strainText(strain)} is left in the sheet when it lies on its wall.`;
  const wall = name === 'back' ? 'back wall' : `${name} wall`;
  return {
    weight: within ? 'good' : 'warn',
    head,
    more: within
      ? `The ${wall} is near enough to one that a flat sheet can be rolled onto: over the sheet’s length that is ${formatTiny(change, job)}, less than the straight cuts keep to (${text(job.fit.markTolerance)}).`
      : `The ${wall} is curved both ways, so no flat sheet lies on it without stretching: over its length by up to ${text(change)}, more than the straight cuts keep to (${text(job.fit.markTolerance)}). A stiff sheet will stand off instead: leave that much at the edges, scribe on the dry fit, or bring the wall nearer to flat.`,
  };
}

/** Below what a rule tells a length is given in hundredths of a millimetre. */
const formatTiny = (mm: number, { display }: Pick<Job, 'display'>): string =>
  mm < 0.01
    ? 'under 0.01 mm'
    : mm < 0.2
      ? `at most ${mm.toFixed(2)} mm`
      : `at most ${formatLength(mm, { unit: display, denominator: 32 })}`;
