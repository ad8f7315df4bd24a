import { describe, expect, it } from 'vitest';
import type { DisplayUnit } from '../../../../src/core';
import { fractionOf, type Key, press } from '../../../../src/views/site/entry/press';

/** The text after keys: digits, `[13]` for so many sixteenths, `+` for a thirty-second more, and `.`, `-`, `<`, `c`. */
function keyed(keys: string, { text = '', fresh = true, unit = 'in' as DisplayUnit } = {}): string {
  const named: Record<string, Key> = { '+': 'half-step', '.': 'point', '-': 'sign', '<': 'back', c: 'clear' };
  let pad = { text, fresh };
  for (const [key, sixteenths] of [...keys.matchAll(/\[(\d+)\]|./g)].map((match) => [match[0], match[1]] as const)) {
    pad = press(pad, sixteenths ? { sixteenths: Number(sixteenths) } : (named[key] ?? { digit: key }), unit);
  }
  return pad.text;
}

describe('press, inches', () => {
  it.each([
    ['whole inches and sixteenths', '28[13]', '28 13/16'],
    ['a fraction in lowest terms', '28[8]', '28 1/2'],
    ['a fraction alone', '[5]', '5/16'],
    ['the fraction first', '[5]28', '28 5/16'],
    ['another fraction instead', '28[3][4]', '28 1/4'],
    ['a thirty-second more', '28[3]+', '28 7/32'],
    ['and less again', '28[3]++', '28 3/16'],
    ['a thirty-second alone', '28+', '28 1/32'],
    ['no leading nought', '028', '28'],
    ['decimals', '28.25', '28.25'],
    ['a minus', '-1[5]', '-1 5/16'],
    ['a minus turned back', '1-[5]-', '1 5/16'],
  ])('%s', (_, keys, text) => {
    expect(keyed(keys)).toBe(text);
  });

  it('takes back the fraction, then digit by digit', () => {
    expect(keyed('28[13]<')).toBe('28');
    expect(keyed('28[13]<<')).toBe('2');
    expect(keyed('28[13]c')).toBe('');
    expect(keyed('<')).toBe('');
  });

  it('starts a new number with the first digit over one that stood there, but keeps its whole inches for a fraction', () => {
    const stood = { text: '28 13/16', fresh: true };
    expect(keyed('3', stood)).toBe('3');
    expect(keyed('34', stood)).toBe('34');
    expect(keyed('[5]', stood)).toBe('28 5/16');
    expect(keyed('3', { text: '-1 5/16', fresh: true })).toBe('-3');
  });

  it('puts a fraction on a length that was written in another way, and leaves one that it does not understand', () => {
    expect(keyed('[5]', { text: '4 ft', fresh: false })).toBe('48 5/16');
    expect(keyed('[5]', { text: 'about 4', fresh: false })).toBe('about 4');
  });
});

describe('press, millimetres', () => {
  it('makes whole numbers and decimals, and no fraction', () => {
    expect(keyed('1234', { unit: 'mm' })).toBe('1234');
    expect(keyed('731.5', { unit: 'mm' })).toBe('731.5');
    expect(keyed('731.5.2', { unit: 'mm' })).toBe('731.52');
    expect(keyed('.5', { unit: 'mm' })).toBe('0.5');
    expect(keyed('731<', { unit: 'mm' })).toBe('73');
    expect(keyed('73[5]', { unit: 'mm' })).toBe('73');
  });
});

describe('fractionOf', () => {
  it('tells which keys are down', () => {
    expect(fractionOf('28 13/16')).toEqual({ sixteenths: 13, half: false });
    expect(fractionOf('28 7/32')).toEqual({ sixteenths: 3, half: true });
    expect(fractionOf('28')).toEqual({ sixteenths: 0, half: false });
    expect(fractionOf('')).toBeNull();
    expect(fractionOf('28.5')).toBeNull();
  });
});
