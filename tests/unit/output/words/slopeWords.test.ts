import { describe, expect, it } from 'vitest';
import { slopeWords } from '../../../../src/output/words';
import { fixtureJob } from '../fixture';

const [inches, metric] = [fixtureJob({ display: 'in' }), fixtureJob({ display: 'mm' })];

describe('slopeWords', () => {
  it('tells a slope over 8 ft in inches and over 1 m in millimetres, with its ±', () => {
    // 10 mm/m over 2438.4 mm: 24.384 mm, 0.96 in
    expect(slopeWords(-10, 0.2, inches).words).toBe('15/16" ±1/16" in 8 ft');
    expect(slopeWords(-10, 0.2, metric).words).toBe('10.0 ±0.4 mm/m');
  });

  it('has no ± for a slope that was chosen', () => {
    expect(slopeWords(10, null, inches)).toEqual({ none: false, words: '15/16" in 8 ft', plusMinus: '' });
    expect(slopeWords(10, null, metric)).toEqual({ none: false, words: '10.0 mm/m', plusMinus: '' });
  });

  it('says where a slope is too small to be told', () => {
    expect(slopeWords(0.04, 0.5, metric)).toMatchObject({ none: true, plusMinus: '±1.0 mm/m' });
    expect(slopeWords(0.2, 0.5, inches).none).toBe(true);
    expect(slopeWords(0.5, 0.5, inches).none).toBe(false);
  });
});
