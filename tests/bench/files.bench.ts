import { fontsFromDisk } from '../../src/cli/fonts';
import { solve } from '../../src/core';
import { jobFiles } from '../../src/output';
import { madeJob } from '../reference/templates/madeJob';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

export const name = 'files';
export const about =
  'Every file of a demo job with shelves: templates, dry fit, lists and the job pack with all pages at 1:1.';

export async function run({ count = 5 }: BenchOptions): Promise<Row[]> {
  const { job, result } = madeJob();
  const fonts = await fontsFromDisk();
  await jobFiles(job, result, fonts);
  const [making, solving]: [number[], number[]] = [[], []];
  for (let round = 0; round < count; round++) {
    const began = performance.now();
    await jobFiles(job, result, fonts);
    const made = performance.now();
    solve(job);
    making.push(made - began);
    solving.push(performance.now() - made);
  }
  const against = { what: 'solving the job', value: share(solving, 0.5) };
  return [{ what: 'all files of a job', value: share(making, 0.5), unit: 'ms', against, asked: { atMost: 2000 } }];
}
