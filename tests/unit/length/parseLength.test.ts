import { describe, expect, it } from 'vitest';
import { LONGEST_LENGTH, parseLength } from '../../../src/core/length';
import { mmOf } from './reading';

/** 59 13/16 in = 957/16 × 25.4 mm */
const TAPE = 1519.2375;

describe('inches', () => {
  it.each([
    '59 13/16',
    '59-13/16"',
    '59 13/16 in',
    '59 13/16 in.',
    '59 13/16in',
    '59 13/16 inches',
    '59 13/16 INCHES',
    '  59   13 / 16  "  ',
    '59"13/16',
    '59" 13/16',
    '59 26/32',
    '59 and 13/16',
    '59 & 13/16"',
    '59.8125"',
    '59,8125"',
    '59.8125',
    '+59 13/16',
    "59 13/16''",
  ])('%s', (text) => expect(mmOf(text)).toBe(TAPE));

  it('take a fraction alone', () => {
    expect(mmOf('13/16')).toBe(20.6375);
    expect(mmOf('1/64')).toBe(0.396875);
    expect(mmOf('59 0/16')).toBe(59 * 25.4);
    expect(mmOf('13/16 of an inch')).toBe(20.6375);
    expect(mmOf('1/16th')).toBe(1.5875);
    expect(mmOf('13 16ths')).toBe(20.6375);
    expect(mmOf('5 3 32nds')).toBe((163 / 32) * 25.4);
  });

  it('take any denominator to 64', () => {
    for (let below = 2; below <= 64; below++) {
      expect(mmOf(`59 1/${below}`)).toBeCloseTo((59 + 1 / below) * 25.4, 10);
    }
  });
});

describe('feet and inches', () => {
  it.each([
    "4' 11 13/16",
    '4\'-11 13/16"',
    '4\' - 11 13/16"',
    '4\' -11-13/16"',
    '4\'11 13/16"',
    '4 ft 11 13/16 in',
    '4 ft. 11 13/16 in.',
    '4ft11 13/16in',
    '4 feet, 11 13/16 inches',
    '4 foot and 11.8125 in',
    '4\' 11" 13/16',
    '4 ft 11 13/16',
  ])('%s', (text) => {
    expect(mmOf(text)).toBe(TAPE);
    expect(mmOf(text, 'mm')).toBe(TAPE);
  });

  it('stand alone or with a fraction of an inch only', () => {
    expect(mmOf("4'")).toBe(1219.2);
    expect(mmOf('4 1/2 ft')).toBe(1371.6);
    expect(mmOf('4.5ft')).toBe(1371.6);
    expect(mmOf('4\' 1/2"')).toBe(1231.9);
    expect(mmOf('4\' 0 1/2"')).toBe(1231.9);
    expect(mmOf("4'-½")).toBe(1231.9);
  });
});

describe('metric', () => {
  it.each([
    '1519 mm',
    '1519mm',
    '151.9 cm',
    '151,9 cm',
    '1.519 m',
    '1,519 m',
    '1519,0 mm',
    '1 m 51.9 cm',
    '1 m 519 mm',
  ])('%s', (text) => {
    expect(mmOf(text)).toBe(1519);
    expect(mmOf(text, 'mm')).toBe(1519);
  });

  it.each(['1519 millimetres', '1519 Millimeters', '151.9 centimetres', '1.519 metres', '1.519 meter'])('%s', (text) =>
    expect(mmOf(text)).toBe(1519),
  );

  it('takes fractions of a unit that is written', () => {
    expect(mmOf('1/2 m')).toBe(500);
    expect(mmOf('12 1/4 cm', 'mm')).toBe(122.5);
  });

  it('reads a comma between three figures and three as decimal only where thousands would be too long', () => {
    expect(mmOf('1,519 m')).toBe(1519);
    expect(parseLength('1,519', 'mm').ok).toBe(false);
    expect(parseLength('1,519 mm', 'in').ok).toBe(false);
    expect(mmOf('1,519.5 mm')).toBe(1519.5);
    expect(mmOf('1.519,5 mm')).toBe(1519.5);
    expect(mmOf('0,519 m')).toBe(519);
    expect(mmOf('1,5190 m')).toBe(1519);
  });
});

describe('bare numbers', () => {
  it('are in the unit shown', () => {
    expect(mmOf('1519', 'mm')).toBe(1519);
    expect(mmOf('1519', 'in')).toBe(1519 * 25.4);
    expect(mmOf('12.5', 'mm')).toBe(12.5);
    expect(mmOf('.5', 'in')).toBe(12.7);
    expect(mmOf('5.', 'mm')).toBe(5);
    expect(mmOf('12 1/2', 'mm')).toBe(12.5);
    expect(mmOf('12½', 'mm')).toBe(12.5);
  });

  it('are inches after feet, whatever is shown', () => expect(mmOf("4' 11", 'mm')).toBe(59 * 25.4));

  it('are refused as mm where the fraction tells of inches', () =>
    expect(parseLength('59 13/16', 'mm')).toEqual({
      ok: false,
      message: '“59 13/16” looks like inches where millimetres are shown; write 59 13/16 in (1519.2 mm) or decimals',
    }));
});

describe('typographic signs', () => {
  it.each([
    '59 ¹³⁄₁₆',
    '59¹³⁄₁₆″',
    '59 13⁄16”',
    '59 13∕16',
    '59\u00a013/16',
    '59\u200913/16"',
    '59–13/16″',
    '59‑13/16',
    '4′ 11 13/16″',
    '4’-11 13/16”',
    '4ʹ 11 ¹³⁄₁₆ʺ',
    '4′ 11 13/16′′',
    '５９　１３／１６',
    '\u200e59 13/16\u200f',
    '\ufeff59 13/16',
  ])('%s', (text) => expect(mmOf(text)).toBe(TAPE));

  it.each([
    ['½', 1, 2],
    ['⅓', 1, 3],
    ['⅔', 2, 3],
    ['¼', 1, 4],
    ['¾', 3, 4],
    ['⅕', 1, 5],
    ['⅖', 2, 5],
    ['⅗', 3, 5],
    ['⅘', 4, 5],
    ['⅙', 1, 6],
    ['⅚', 5, 6],
    ['⅐', 1, 7],
    ['⅛', 1, 8],
    ['⅜', 3, 8],
    ['⅝', 5, 8],
    ['⅞', 7, 8],
    ['⅑', 1, 9],
    ['⅒', 1, 10],
    ['⅟₁₆', 1, 16],
    ['⅟32', 1, 32],
    ['³⁄₃₂', 3, 32],
  ])('%s', (sign, above, below) => {
    expect(mmOf(sign)).toBeCloseTo((above / below) * 25.4, 12);
    expect(mmOf(`59${sign}`)).toBeCloseTo((59 + above / below) * 25.4, 10);
    expect(mmOf(`59 ${sign}"`)).toBeCloseTo((59 + above / below) * 25.4, 10);
    expect(mmOf(`−59-${sign}`)).toBeCloseTo(-(59 + above / below) * 25.4, 10);
  });

  it('group figures by a narrow space', () => expect(mmOf('1\u202f519 mm')).toBe(1519));
});

describe('signs', () => {
  it.each(['-3/8', '−3/8', '–3/8"', '- 3/8 in', 'minus 3/8', '-⅜'])('%s', (text) => expect(mmOf(text)).toBe(-9.525));

  it('count for the whole length', () => {
    expect(mmOf('-59 13/16')).toBe(-TAPE);
    expect(mmOf('-59-13/16')).toBe(-TAPE);
    expect(mmOf('-4\' 11 13/16"')).toBe(-TAPE);
  });

  it('give no negative zero', () => expect(Object.is(mmOf('-0'), 0)).toBe(true));
});

describe('the longest length', () => {
  it('is taken and nothing beyond', () => {
    expect(mmOf('100 m')).toBe(LONGEST_LENGTH);
    expect(mmOf('-100 m')).toBe(-LONGEST_LENGTH);
    expect(parseLength('100.001 m', 'in').ok).toBe(false);
    expect(parseLength('-100.001 m', 'in').ok).toBe(false);
  });
});
