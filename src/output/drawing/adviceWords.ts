import { type Advice, formatLength, type Job } from '../../core';
import { capital } from './capital';

/** One piece of advice as a sentence with its source, never more certain than that. */
export function adviceWords({ what, met, howMuch, source }: Advice, { display }: Pick<Job, 'display'>): string {
  const off = howMuch !== null && howMuch > 0 ? `: off by ${formatLength(howMuch, { unit: display })}` : '';
  return `${capital(what)}. ${met ? 'So it is here' : `Not so here${off}`} (${source}; local code decides).`;
}
