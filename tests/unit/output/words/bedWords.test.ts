import { describe, expect, it } from 'vitest';
import { type JobInput, solve } from '../../../../src/core';
import { bedLines, bedText } from '../../../../src/output';
import { bedFigure } from '../../../../src/output/figure';
import { fullPlan, jobWith, plausibleAlcove, withSd } from '../../../simulate';

const made = (choices: Partial<JobInput>) => {
  const job = jobWith(withSd(fullPlan(plausibleAlcove(7)), 0.1), { display: 'mm', ...choices });
  return { job, result: solve(job) };
};
const wordsOf = (choices: Partial<JobInput>): Map<string, string> => {
  const { job, result } = made(choices);
  return new Map(bedLines('back', result.bedding.back, job).map(({ label, words }) => [label, words]));
};

describe('bedLines', () => {
  it('say where a rigid sheet touches and how thick its bed is, with ±', () => {
    const words = wordsOf({});
    expect(words.get('The sheet')).toContain('three points');
    expect(words.get('Touches')!.split(';')).toHaveLength(3);
    expect(words.get('Bed')).toMatch(/mm to [\d.]+ mm ±[\d.]+ mm, thickest .* the level line/);
    expect(words.get('Bending')).toBe('none');
    expect(words.has('Worked out')).toBe(false);
  });

  it('say of a bent sheet its strain, what its dots hold and how far it is worked out', () => {
    const words = wordsOf({ bedding: { stiffness: 'stated' } });
    expect(words.get('Bending')).toMatch(/% ±[\d.]+ % strain at most, .* the limit is 0.3 %/);
    expect(words.get('Springs back')).toMatch(
      /with [\d.]+ N ±[\d.]+ N at most on one dot, .*; [\d.]+ N ±[\d.]+ N on all/,
    );
    expect(words.get('Touches')).toMatch(/the strongest .*, somewhere within [\d.]+ mm × [\d.]+ mm/);
    expect(words.get('Worked out')).toMatch(/24 × 24 cells in \d+ steps; .* of the load out of balance, energy .* %/);
  });

  it('never give a small force a ± of nothing', () => {
    const words = wordsOf({ display: 'in', bedding: { stiffness: 'stated' } });
    expect(words.get('Springs back')).toMatch(
      /lbf ±[\d.]*[1-9]\d* lbf at most on one dot, .* lbf ±[\d.]*[1-9]\d* lbf on all/,
    );
  });

  it('tell a hollow that the adhesive does not reach', () => {
    const { job, result } = made({ bedding: { reach: 2.2 } });
    const line = bedLines('back', result.bedding.back, job).find(({ label }) => label === 'Beyond the adhesive');
    expect(line?.bad).toBe(true);
    expect(line?.words).toContain('m² with a bed to');
  });
});

describe('bedText', () => {
  it('gives places from the control lines, and at the back wall', () => {
    const { job } = made({});
    const { place } = bedText(job);
    expect(place('back', { u: -120, v: 300 })).toBe('120.0 mm left of the plumb line, 300.0 mm above the level line');
    expect(place('left', { u: 4, v: 0 })).toBe('at the back wall, on the level line');
  });
});

describe('bedFigure', () => {
  it('numbers every shim and covers every panel with grays', () => {
    const { job, result } = made({ bedding: { leastShim: 0.2 } });
    const { shapes } = bedFigure(job, result, 40);
    const shims = Object.values(result.bedding).reduce((sum, { shims: { list } }) => sum + list.length, 0);
    expect(shims).toBeGreaterThan(0);
    expect(shapes.filter(({ kind }) => kind === 'disc')).toHaveLength(shims);
    expect(shapes.filter((shape) => shape.kind === 'path' && shape.look.startsWith('bed-')).length).toBeGreaterThan(60);
  });
});
