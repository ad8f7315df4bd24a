import { describe, expect, it } from 'vitest';
import { surveyPlan } from '../../../../src/core';
import { jobWith, plausibleAlcove } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';

const alcove = plausibleAlcove(5);
const planOf = (scans: ReturnType<typeof cellScan>[]) => surveyPlan(jobWith([], { scans }));

describe('surveyPlan of a job with a scan', () => {
  const without = planOf([]);
  const withScan = planOf([cellScan(alcove, { size: 100 })]);

  it('asks for little more than what tells the scan its place, size and upright', () => {
    expect(withScan[0]!.before).toBeLessThan(15);
    expect(withScan.at(-1)!.after).toBeLessThan(0.8);
    expect(withScan.length).toBeLessThan(0.4 * without.length);
    expect(withScan.some(({ reading }) => reading.kind === 'plumb')).toBe(true);
    expect(withScan.some(({ reading }) => reading.kind === 'tape-to-corner')).toBe(true);
  });

  it('asks for more where the scan did not see all walls', () => {
    const part = planOf([cellScan(alcove, { size: 100, surfaces: ['back', 'left'] })]);
    expect(part.length).toBeGreaterThan(withScan.length);
    expect(part.some(({ reading }) => reading.kind === 'tape-to-corner' && reading.side === 'right')).toBe(true);
    expect(part.at(-1)!.after).toBeLessThan(0.8);
  });
});
