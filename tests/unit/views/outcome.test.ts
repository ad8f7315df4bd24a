import { describe, expect, it } from 'vitest';
import type { ReadingReport, Suspect } from '../../../src/core';
import { lengthsIn } from '../../../src/views/parts/useLengths';
import { outcomeOf } from '../../../src/views/site/readings/outcome';

const report = (part: Partial<ReadingReport>): ReadingReport => ({
  id: 'r1',
  kind: 'span',
  observed: 1524,
  residual: 0,
  sd: 0.8,
  w: 0.2,
  redundancy: 0.5,
  mdb: 4.7,
  external: null,
  flag: null,
  ...part,
});
const suspect = (part: Partial<Suspect>): Suspect => ({
  id: 'r1',
  kind: 'span',
  observed: 1524,
  w: 9,
  fits: 1498.6,
  fitsSd: 0.6,
  located: true,
  alternatives: [],
  orShape: [],
  slip: null,
  ifOff: null,
  ...part,
});
const lengths = lengthsIn('in');
const of = (one: ReadingReport, suspects: Suspect[] = []) =>
  outcomeOf({ report: one, suspects, lengths, name: (id) => id });

describe('outcomeOf', () => {
  it('says that a reading agrees, with its ± and what would go unseen', () => {
    const { weight, words, detail } = of(report({}));
    expect([weight, words]).toEqual(['good', 'agrees']);
    expect(detail).toMatch(/^±1\/16", slips under 3\/16" go unseen$/);
  });

  it('tells by how much and which way another value fits', () => {
    expect(of(report({ residual: 1.5875 })).words).toBe('1/16" more fits: 60 1/16"');
    expect(of(report({ residual: -1.5875 })).words).toBe('1/16" less fits: 59 15/16"');
  });

  it('never praises a reading that disagrees while another one is suspect', () => {
    expect(of(report({ id: 'r2', residual: 5 }), [suspect({})]).weight).toBe('plain');
  });

  it('says that nothing checks a reading, and that one is left out', () => {
    expect(of(report({ flag: 'unchecked', w: null, mdb: null })).words).toBe('nothing checks this reading');
    expect(of(report({ flag: 'off', residual: null })).words).toBe('left out');
  });

  it('names the reading to measure again and those it cannot be told from', () => {
    const located = of(report({ flag: 're-measure' }), [suspect({})]);
    expect(located).toMatchObject({ weight: 'bad', words: 're-measure this one' });
    expect(located.detail).toBe('reads 60", the other readings point to 59"');
    const doubtful = suspect({ located: false, alternatives: ['r7'] });
    expect(of(report({ flag: 're-measure' }), [doubtful]).detail).toMatch(/cannot tell whether it is this one or r7/);
    expect(of(report({ id: 'r7', flag: 're-measure' }), [doubtful]).words).toBe('may be wrong instead of r1');
  });

  it('tells angles in degrees', () => {
    expect(of(report({ kind: 'angle', observed: 89.5, residual: 0.3, sd: 0.1, mdb: 0.6 })).words).toBe(
      '0.3° more fits: 89.8°',
    );
  });
});
