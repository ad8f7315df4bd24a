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

  it('reads temperatures in the degree shown, or in that written after them', () => {
    expect(readEntry('temperature', '70', 'in')).toEqual({ ok: true, value: expect.closeTo(190 / 9, 12) });
    expect(readEntry('temperature', '-4,5', 'mm')).toEqual({ ok: true, value: -4.5 });
    expect(readEntry('temperature', '20 °C', 'in')).toEqual({ ok: true, value: 20 });
    expect(readEntry('temperature', '68f', 'mm')).toEqual({ ok: true, value: 20 });
    expect(readEntry('temperature-change', '27 °F', 'in')).toEqual({ ok: true, value: 15 });
    expect(readEntry('per-degree', '20', 'in')).toEqual({ ok: true, value: 36 });
  });

  it('says in which degree a temperature is to be written', () => {
    expect(readEntry('temperature', 'warm', 'in')).toEqual({
      ok: false,
      message: '"warm" is not a number; write it like 70, in °F',
    });
    expect(readEntry('temperature', '°C', 'mm')).toMatchObject({ message: expect.stringContaining('like 21, in °C') });
    expect(readEntry('temperature', '°', 'in')).toMatchObject({ ok: false });
    expect(readEntry('temperature', ' ', 'in')).toEqual({ ok: false, message: 'needs a value' });
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

  it('tells the bounds of temperatures in the degree shown, and takes both bounds', () => {
    const inches = draftOf({ ...testJob(), display: 'in' }, 'one');
    const metric = draftOf({ ...testJob(), display: 'mm' }, 'one');
    const room = ['schedule', 'temperature'];
    expect(fieldFault(inches, room, 'temperature', '120')).toBe('must be at most 113 °F; found 120 °F');
    expect(fieldFault(inches, room, 'temperature', '13.9')).toBe('must be at least 14 °F; found 13.9 °F');
    expect(fieldFault(metric, room, 'temperature', '120')).toBe('must be at most 45 °C; found 120 °C');
    for (const text of ['113', '14']) expect(fieldFault(inches, room, 'temperature', text)).toBeNull();
    const swing = ['supplies', 'movement', 'swing'];
    expect(fieldFault(inches, swing, 'temperature-change', '150')).toBe('must be at most 144 °F; found 150 °F');
    expect(fieldFault(inches, swing, 'temperature-change', '144')).toBeNull();
    const grows = ['supplies', 'movement', 'expansion'];
    expect(fieldFault(inches, grows, 'per-degree', '120')).toBe(
      'must be at most 111.111 × 10⁻⁶ per °F; found 120 × 10⁻⁶ per °F',
    );
    expect(fieldFault(metric, grows, 'per-degree', '201')).toBe(
      'must be at most 200 × 10⁻⁶ per °C; found 201 × 10⁻⁶ per °C',
    );
  });
});
