import type { Job } from './job-file';

/**
 * What a result follows from, as text: jobs of one basis have one result (`solve`), however they differ in name, place,
 * finish, choices, prices and quote.
 */
export function basisOf(job: Job): string {
  const { name: _, place: __, finish: ___, choices: ____, prices: _____, quote: ______, ...basis } = job;
  return JSON.stringify(basis);
}
