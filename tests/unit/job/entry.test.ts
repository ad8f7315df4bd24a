import { describe, expect, it } from 'vitest';
import { draftOf } from '../../../src/job/draft';
import { fieldFault, rangeFault, readEntry } from '../../../src/job/entry';
import { testJob } from './testJob';

const { job } = draftOf(testJob(), 'one');

describe('readEntry', () => {
  it('reads a length in the unit shown', () => {
    expect(readEntry('length', '59 13/16', 'in')).toEqual({ ok: true, value: expect.closeTo(1519.2375, 6) });
    expect(readEntry('length', '1519', 'mm')).toEqual({ ok: true, value: 1519 });
  });

  it.each([['89.5'], ['89,5'], ['89.5°'], [' 89.5 ']])('reads %s as degrees', (text) => {
    expect(readEntry('degrees', text, 'in')).toEqual({ ok: true, value: 89.5 });
  });

  it.each([[''], ['  '], ['-'], ['−']])('asks for a value where there is only "%s"', (text) => {
    expect(readEntry('length', text, 'in')).toEqual({ ok: false, message: 'needs a value' });
  });

  it('reads a slope per foot or per metre as mm per m', () => {
    expect(readEntry('slope', '3/16', 'in')).toEqual({ ok: true, value: expect.closeTo(15.625, 9) });
    expect(readEntry('slope', '15.6', 'mm')).toEqual({ ok: true, value: 15.6 });
  });

  it('reads a price by the foot or by the metre as minor units a metre', () => {
    expect(readEntry('money-by-length', '3.47', 'in')).toEqual({ ok: true, value: 1138 });
    expect(readEntry('money-by-length', '11.40', 'mm')).toEqual({ ok: true, value: 1140 });
    expect(readEntry('money-by-length', 'x', 'mm')).toMatchObject({ ok: false });
  });

  it('reads percent as a share', () => {
    expect(readEntry('percent', '7.5 %', 'in')).toEqual({ ok: true, value: 0.075 });
    expect(readEntry('percent', '5', 'in')).toEqual({ ok: true, value: 0.05 });
  });

  it('says what a number looks like', () => {
    expect(readEntry('number', '1/', 'mm')).toEqual({
      ok: false,
      message: expect.stringContaining('"1/" is not a number'),
    });
  });
});

describe('rangeFault', () => {
  it('holds a value to the range of its own field', () => {
    expect(rangeFault(job, ['readings', 'r1', 'value'], 800)).toBeNull();
    expect(rangeFault(job, ['readings', 'r1', 'value'], -5)).not.toBeNull();
    expect(rangeFault(job, ['fit', 'bed'], 31)).not.toBeNull();
    expect(rangeFault(job, ['sheets', 'back', 'width'], 1200)).toBeNull();
    expect(rangeFault(job, ['readings', 'r3', 'gaps', 1, 'value'], 9999)).not.toBeNull();
  });

  it('tells at an item what the items of its list must keep to', () => {
    const points = [
      [0, 0],
      [10, -1],
    ] as [number, number][];
    const rolled = { ...job, rim: { ...job.rim, profile: points } };
    expect(rangeFault(rolled, ['rim', 'profile', 1, 0], 20)).toBeNull();
    expect(rangeFault(rolled, ['rim', 'profile', 1, 0], 0)).toMatch(/further out/);
  });

  it('does not blame a field for another one that is missing', () => {
    const unfinished = { ...job, readings: [{ id: 'r9', kind: 'span' as const }] };
    expect(rangeFault(unfinished, ['readings', 'r9', 'value'], 1500)).toBeNull();
    expect(rangeFault(unfinished, ['readings', 'r9', 'value'], 1e6)).not.toBeNull();
  });
});

describe('fieldFault', () => {
  it('gives the sentence for a text that is no length and for one out of range', () => {
    const draft = draftOf(testJob(), 'one');
    expect(fieldFault(draft, ['fit', 'bed'], 'length', 'soon')).toMatch(/soon/);
    expect(fieldFault(draft, ['fit', 'bed'], 'length', '40')).toMatch(/at most/);
    expect(fieldFault(draft, ['fit', 'bed'], 'length', '1/8')).toBeNull();
    expect(fieldFault(draft, ['prices', 'waste'], 'percent', '150')).toBe('must be at most 100 %; found 150 %');
    expect(fieldFault(draft, ['prices', 'waste'], 'percent', '99.5')).toBeNull();
  });
});
