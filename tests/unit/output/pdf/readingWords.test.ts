import { describe, expect, it } from 'vitest';
import { misfitWords, readingWords, valueWords } from '../../../../src/output/pdf/readingWords';
import { fixtureJob } from '../fixture';

const job = fixtureJob();
const where = (id: string) => readingWords(id, job).where;

describe('readingWords', () => {
  it('tells where each kind was taken', () => {
    expect(where('c1')).toBe('left corner, 27 9/16" above level');
    expect(where('c3')).toBe('right corner, at the level line');
    expect(where('m1')).toBe('back wall, 23 5/8" left of plumb');
    expect(where('p1/2')).toBe('right wall, 15 3/4" out, 35 7/16" above level');
    expect(where('s1')).toBe('at the level line, 23 5/8" out');
    expect(where('d1')).toBe('left corner 27 9/16" below level to right corner 27 9/16" above level');
  });
  it('is empty for a row that no reading stands behind', () => {
    expect(readingWords('nobody/3', job)).toEqual({ what: '', where: '', note: '' });
  });
  it('prefers a whole reading to the gap of another one', () => {
    const odd = fixtureJob({ readings: [{ id: 'a/0', kind: 'depth', wall: 'left', height: 0, value: 700 }] });
    expect(readingWords('a/0', odd).what).toBe('depth to front edge');
  });
});

describe('valueWords and misfitWords', () => {
  it('tell lengths in the unit of the job and angles in degrees', () => {
    expect(valueWords('depth', 762, job)).toBe('30"');
    expect(valueWords('depth', 762, fixtureJob({ display: 'mm' }))).toMatch(/^762(\.0)? mm$/);
    expect(valueWords('angle', 89.36, job)).toBe('89.4°');
  });
  it('tell misfits in mm with a sign', () => {
    expect(misfitWords('depth', -0.36)).toBe('−0.4 mm');
    expect(misfitWords('depth', 0.04)).toBe('0.0 mm');
    expect(misfitWords('angle', 0.123)).toBe('+0.12°');
  });
});
