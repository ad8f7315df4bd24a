import { describe, expect, it } from 'vitest';
import { parseJob } from '../../../../src/core';
import { cutRule, ruleChoices } from '../../../../src/views/bench/forms/cut-rule';
import { fallAdvice, newShelf } from '../../../../src/views/bench/forms/shelf-words';
import { solvedDemo } from '../../scene/solvedDemo';

const { job } = solvedDemo();

describe('cutRule', () => {
  const chosen = (rule: 'keep' | 'centre' | 'least', from = job) => {
    const set = new Map(ruleChoices(rule, from.fit.keep).map(([path, value]) => [path.join('.'), value]));
    return {
      cutting: { ...from.cutting, sheets: set.get('cutting.sheets') },
      fit: { ...from.fit, keep: set.get('fit.keep') ?? from.fit.keep },
    } as Pick<typeof job, 'cutting' | 'fit'>;
  };

  it.each(['keep', 'centre', 'least'] as const)('is %s after it was chosen, from any other', (rule) => {
    for (const before of ['keep', 'centre', 'least'] as const)
      expect(cutRule(chosen(rule, { ...job, ...chosen(before) }))).toBe(rule);
  });

  it('leaves the factory edges kept as they are', () => {
    const kept = {
      ...job,
      fit: { ...job.fit, keep: { back: ['left' as const], left: [], right: ['front' as const] } },
    };
    expect(chosen('keep', kept).fit.keep).toEqual(kept.fit.keep);
  });
});

describe('fallAdvice', () => {
  it.each([10.4, 15.6, 20.8])('has nothing to say of %d mm/m', (slope) => expect(fallAdvice(slope, 'in')).toBeNull());
  it('tells of a flat and of a steep shelf in the unit shown', () => {
    expect(fallAdvice(5, 'in')).toMatch(/flat.*1\/8 to 1\/4 in/);
    expect(fallAdvice(30, 'mm')).toMatch(/steep.*mm\/m/);
  });
});

describe('newShelf', () => {
  it('stands free of the others and makes a valid job', () => {
    let shelves: typeof job.shelves = [];
    for (let i = 0; i < 6; i++) shelves = [...shelves, newShelf(shelves)];
    expect(new Set(shelves.map(({ id }) => id)).size).toBe(6);
    expect(parseJob({ ...job, shelves }).ok).toBe(true);
    for (const corner of ['left', 'right']) {
      const heights = shelves.filter((shelf) => shelf.corner === corner).map(({ aboveRim }) => aboveRim);
      expect(heights.slice(1).every((height, i) => height - heights[i]! > 60)).toBe(true);
    }
  });
});
