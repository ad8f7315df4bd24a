// Worst outline misfit over random exact alcoves: npx tsx tests/bench/exactAlcoves.bench.ts [count]
import { solve } from '../../src/core';
import { fullPlan, jobWith, outlineDistance, plausibleAlcove, trueOutline, withSd } from '../simulate';

const PANELS = ['back', 'left', 'right'] as const;

const count = Number(process.argv[2] ?? 1000);
const misfits: { seed: number; panel: string; misfit: number }[] = [];
const times: number[] = [];
for (let seed = 1; seed <= count; seed++) {
  const alcove = plausibleAlcove(seed);
  const job = jobWith(withSd(fullPlan(alcove, { seed }), 0.01));
  const start = performance.now();
  const { panels } = solve(job);
  times.push(performance.now() - start);
  for (const panel of PANELS) {
    misfits.push({ seed, panel, misfit: outlineDistance(panels[panel].outline, trueOutline(alcove, job, panel)) });
  }
}

const byMisfit = misfits.toSorted((a, b) => a.misfit - b.misfit);
const worst = byMisfit.at(-1)!;
const share = (values: number[], part: number): number =>
  values.toSorted((a, b) => a - b)[Math.floor(part * (values.length - 1))]!;
const all = misfits.map(({ misfit }) => misfit);
console.table({
  alcoves: count,
  'outlines compared': misfits.length,
  'misfit, median (mm)': share(all, 0.5).toFixed(4),
  'misfit, 95th (mm)': share(all, 0.95).toFixed(4),
  'misfit, worst (mm)': `${worst.misfit.toFixed(4)} (alcove ${worst.seed}, ${worst.panel} panel)`,
  'readings to result, median (ms)': share(times, 0.5).toFixed(1),
  'readings to result, 95th (ms)': share(times, 0.95).toFixed(1),
});
