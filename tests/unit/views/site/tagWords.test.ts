import { describe, expect, it } from 'vitest';
import { blankJob } from '../../../../src/job/blank';
import { type Draft, type DraftFixture, type DraftReading, draftOf } from '../../../../src/job/draft';
import { type FieldPath, fieldKey } from '../../../../src/job/path';
import { lengthsIn } from '../../../../src/views/parts/useLengths';
import { surveyOf } from '../../../../src/views/site/survey/survey-places';
import { tagWords, unfinishedWords } from '../../../../src/views/site/survey/tag-words';

const lengths = lengthsIn('mm');
const typedAt = (...typed: [FieldPath, string][]): Draft['typed'] =>
  Object.fromEntries(typed.map(([path, text]) => [fieldKey(path), text]));

function placeOf(change: { readings?: DraftReading[]; fixtures?: DraftFixture[] }) {
  const job: Draft['job'] = { ...draftOf(blankJob(), 'd').job, ...change };
  return surveyOf(job, []).places.find(({ id }) => id !== null)!;
}

describe('words of a place that is not finished', () => {
  const corner: DraftReading = {
    id: 'r',
    kind: 'tape-to-corner',
    side: 'left',
    height: 900,
    value: 730,
    repeats: [734],
  };
  const taken = placeOf({ readings: [corner] });

  it('are what is typed, in the first number or in one taken again, in place of the mean before', () => {
    expect(tagWords(taken, lengths).short).toBe('732.0 ×2');
    const first = unfinishedWords(taken, typedAt([['readings', 'r', 'value'], ' 28 13/ ']), lengths);
    expect(first).toEqual({ short: '28 13/', long: '“28 13/”', bow: 0 });
    const again = unfinishedWords(taken, typedAt([['readings', 'r', 'repeats', 0], '7x']), lengths);
    expect(again).toEqual({ short: '7x', long: '“7x”', bow: 0 });
  });

  it('are cut short on the drawing and whole in full, and say where all was taken out', () => {
    const long = unfinishedWords(taken, typedAt([['readings', 'r', 'value'], 'twenty-eight']), lengths);
    expect(long).toMatchObject({ short: 'twenty-e…', long: '“twenty-eight”' });
    expect(unfinishedWords(taken, typedAt([['readings', 'r', 'value'], '']), lengths)).toMatchObject({
      short: '…',
      long: '',
    });
  });

  it('stay the number where another field of the reading is what is not read', () => {
    const words = unfinishedWords(taken, typedAt([['readings', 'r', 'height'], 'up']), lengths);
    expect(words).toEqual(tagWords(taken, lengths));
  });

  it('count the gaps that are read, and tell the one that is not', () => {
    const gaps = [{ height: -600, value: 40 }, { height: 0, value: 41 }, { height: 800 }];
    const hung = placeOf({ readings: [{ id: 'p', kind: 'plumb', wall: 'back', at: 700, gaps }] });
    expect(tagWords(hung, lengths).long).toBe('2 of 3 gaps');
    const held = unfinishedWords(hung, typedAt([['readings', 'p', 'gaps', 1, 'value'], '1 1/']), lengths);
    expect(held).toEqual({ short: '1 of 3', long: '1 of 3 gaps, “1 1/”', bow: 0 });
    const never = unfinishedWords(hung, typedAt([['readings', 'p', 'gaps', 2, 'value'], '1/']), lengths);
    expect(never).toEqual({ short: '2 of 3', long: '2 of 3 gaps, “1/”', bow: 0 });
  });

  it('name the fixture and tell each number of it that is not read', () => {
    const valve = placeOf({
      fixtures: [{ id: 'valve', kind: 'valve', wall: 'left', aboveRim: 700, fromBack: 380, hole: 90 }],
    });
    expect(tagWords(valve, lengths)).toEqual({ short: 'valve', long: '700.0 mm above the rim', bow: 0 });
    const typed = typedAt([['fixtures', 'valve', 'fromBack'], '15 /'], [['fixtures', 'valve', 'hole'], '3,,']);
    expect(unfinishedWords(valve, typed, lengths)).toEqual({ short: 'valve', long: '“15 /”, “3,,”', bow: 0 });
  });
});
