import { solve } from '../../src/core';
import { fullPlan, jobWith, outlineDistance, plausibleAlcove, trueOutline, withSd } from '../simulate';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

const PANELS = ['back', 'left', 'right'] as const;

export const name = 'exact-alcoves';
export const about =
  'Random alcoves read in full without error: panel outlines against the truth, and the time from job to result.';

export function run({ count = 1000 }: BenchOptions): Row[] {
  const misfits: { of: string; misfit: number }[] = [];
  const times: number[] = [];
  for (let seed = 1; seed <= count; seed++) {
    const alcove = plausibleAlcove(seed);
    const job = jobWith(withSd(fullPlan(alcove, { seed }), 0.01));
    const began = performance.now();
    const { panels } = solve(job);
    times.push(performance.now() - began);
    for (const panel of PANELS) {
      const misfit = outlineDistance(panels[panel].outline, trueOutline(alcove, job, panel));
      misfits.push({ of: `${panel} panel of alcove ${seed}`, misfit });
    }
  }
  const all = misfits.map(({ misfit }) => misfit);
  const worst = misfits.reduce((a, b) => (b.misfit > a.misfit ? b : a));
  return [
    { what: 'outline misfit, median', value: share(all, 0.5), unit: 'mm', note: `${count} alcoves` },
    { what: 'outline misfit, 95th percentile', value: share(all, 0.95), unit: 'mm' },
    { what: 'outline misfit, worst', value: worst.misfit, unit: 'mm', asked: { atMost: 0.2 }, note: worst.of },
    { what: 'job to result, median', value: share(times, 0.5), unit: 'ms' },
    { what: 'job to result, 95th percentile', value: share(times, 0.95), unit: 'ms' },
  ];
}
