import { expect, it } from 'vitest';
import { type NextReading, solve } from '../../../../src/core';
import { readingAdvice } from '../../../../src/output/pdf/readingAdvice';
import { fixtureJob } from '../fixture';

const job = fixtureJob();
const report = solve(job).adjustment;
const told = (more: Partial<typeof report>) => readingAdvice(job, { ...report, ...more }).join('\n');
const next = (reading: NextReading['reading']): NextReading => ({
  reading,
  kind: reading.kind,
  wall: null,
  side: null,
  height: 0,
  at: null,
  sdBefore: 2,
  sdAfter: 1,
});

it('says where the next reading is taken: a hung line at its heights, a drop to the rim at none', () => {
  const hung = next({ kind: 'plumb', wall: 'left', at: 406.4, gaps: [{ height: 762 }, { height: -609.6 }] });
  expect(told({ next: hung })).toContain(
    'Worth taking next: gap to plumb line, left wall, 16" out, 30" above level, 24" below level. The widest',
  );
  const drop = next({ kind: 'tape-to-rim', wall: 'back', at: -508 });
  expect(told({ next: drop })).toContain('Worth taking next: tape to rim, back wall, 20" left of plumb. The widest');
});

it('counts one spare observation as one', () => {
  expect(told({ s0: 1, dof: 1 })).toContain('(1 spare observation)');
  expect(told({ s0: 1, dof: 2 })).toContain('(2 spare observations)');
});
