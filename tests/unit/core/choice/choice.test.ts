import { describe, expect, it } from 'vitest';
import { applyChoice, formatLength, hidingOf, hidingPairs, type Job, solve } from '../../../../src/core';
import { hidingWords } from '../../../../src/output';
import { plainlyTrimmedDemo } from '../../scene/solvedDemo';

const { job, result } = plainlyTrimmedDemo();
const [narrow, wide] = job.choices.map((choice) => applyChoice(job, choice)) as [Job, Job];
const [narrowResult, wideResult] = [solve(narrow), solve(wide)];

describe('applyChoice', () => {
  it('changes what the choice says and nothing else', () => {
    expect({ ...narrow, finish: job.finish, trim: job.trim, shelves: job.shelves }).toEqual(job);
    expect(narrow.trim).toEqual({ ...job.trim, ...job.choices[0]!.trim });
    expect(wide.shelves).toHaveLength(2);
    expect(applyChoice(job, { id: 'same' })).toEqual(job);
  });
});

describe('hidingOf', () => {
  it('tells of every piece of trim what its cover says', () => {
    const found = hidingOf(result);
    expect(found.map(({ piece }) => piece).sort()).toEqual(result.pieces.trim.map(({ id }) => id).sort());
    const vertical = result.pieces.trim.find(({ id }) => id === 'trim.right.vertical')!;
    expect(found.find(({ piece }) => piece === vertical.id)).toMatchObject(vertical.cover!);
  });
});

describe('hidingPairs', () => {
  it('pairs the same edges, what differs most in sight first, the taper measured alike', () => {
    const pairs = hidingPairs(result, narrowResult);
    expect(pairs[0]!.kind).toBe('vertical');
    expect(pairs[0]!.second!.shows).toBeGreaterThan(0);
    for (const { first, second } of pairs) expect(first!.taper).toBeCloseTo(second!.taper, 9);
  });

  it('keeps an edge that one of the two ways leaves without trim', () => {
    const without = solve({ ...job, trim: { ...job.trim, verticals: false } });
    const pair = hidingPairs(result, without).find(({ piece }) => piece === 'trim.left.vertical')!;
    expect([pair.first !== null, pair.second]).toEqual([true, null]);
  });
});

describe('hidingWords', () => {
  const names = ['the trim of the job', 'the narrow one'] as const;

  it('says what each hides of the measured taper and what stays in sight', () => {
    const length = (mm: number) => formatLength(mm, { unit: 'in', denominator: 32 });
    const expected = hidingPairs(result, narrowResult)
      .filter(({ kind }) => kind === 'vertical')
      .map(
        ({ name, first, second }) =>
          `The trim of the job hides the ${length(first!.taper)} taper at the ${name}; the narrow one would show ${length(second!.shows)}.`,
      );
    expect(expected).toHaveLength(2);
    expect(hidingWords(hidingPairs(result, narrowResult), names, job)).toEqual(expected);
  });

  it('tells how far each laps where both hide, and nothing where they are the same', () => {
    const [first] = hidingWords(hidingPairs(result, wideResult), names, job);
    expect(first).toMatch(/^Both hide the [\d/]+" taper at the (left|right) side vertical: the narrow one laps/);
    expect(hidingWords(hidingPairs(result, result), names, job)).toEqual([]);
  });

  it('says that an edge stays open where there is no trim, and that neither hides it', () => {
    const without = solve({ ...job, trim: { ...job.trim, verticals: false } });
    expect(hidingWords(hidingPairs(without, result), names, job)).toContainEqual(
      expect.stringMatching(
        /^The narrow one covers the edge with the left side vertical.*the trim of the job leaves that edge open\.$/,
      ),
    );
    expect(hidingWords(hidingPairs(narrowResult, narrowResult), names, job)[0]).toMatch(
      /^Neither hides the .* would show .*, the narrow one /,
    );
  });
});
