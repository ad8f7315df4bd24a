import { solve } from '../../src/core';
import { fullPlan, jobWith, outlineDistance, plausibleAlcove, trueOutline, withSd } from '../simulate';
import type { BenchOptions, Row } from './bench';
import { share } from './time';

const PANELS = ['back', 'left', 'right'] as const;

export const name = 'exact';
export const about = 'Panel outlines from exact readings of random alcoves, against the true outlines.';

export function run({ count = 1000 }: BenchOptions): Row[] {
  const misfits: number[] = [];
  const times: number[] = [];
  const worst = { misfit: -1, where: '' };
  for (let seed = 1; seed <= count; seed++) {
    const alcove = plausibleAlcove(seed);
    const job = jobWith(withSd(fullPlan(alcove, { seed }), 0.01));
    const began = performance.now();
    const { panels } = solve(job);
    times.push(performance.now() - began);
    for (const panel of PANELS) {
      const misfit = outlineDistance(panels[panel].outline, trueOutline(alcove, job, panel));
      misfits.push(misfit);
      if (misfit > worst.misfit) Object.assign(worst, { misfit, where: `alcove ${seed}, ${panel} panel` });
    }
  }
  return [
    { what: 'outlines compared', value: misfits.length, unit: '1' },
    { what: 'misfit, median', value: share(misfits, 0.5), unit: 'mm' },
    { what: 'misfit, 95th percentile', value: share(misfits, 0.95), unit: 'mm' },
    { what: 'misfit, worst', value: worst.misfit, unit: 'mm', note: worst.where },
    { what: 'job to result, median', value: share(times, 0.5), unit: 'ms' },
    { what: 'job to result, 95th percentile', value: share(times, 0.95), unit: 'ms' },
  ];
}
