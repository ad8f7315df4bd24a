import { describe, expect, it } from 'vitest';
import { needsNoShaping, plainlyPrintable, printable } from '../../../../src/output/pdf/printable';

const glyphs = new Set([...'abcÄŁ ½±"مع\uFFFD'].map((character) => character.codePointAt(0)!));

describe('printable', () => {
  it('keeps what the font has', () => {
    expect(printable('abc ÄŁ ½ ±"', glyphs)).toBe('abc ÄŁ ½ ±"');
  });
  it('replaces what it lacks, once per character, pairs of code units included', () => {
    expect(printable('a浴😀b', glyphs)).toBe('a\uFFFD\uFFFDb');
    expect(printable('a\uD83Db', glyphs)).toBe('a\uFFFDb');
  });
  it('turns line breaks and control characters into blanks', () => {
    expect(printable('a\nb\u0000c\u2028a', glyphs)).toBe('a b c a');
  });
});

describe('shaping', () => {
  it('is needed by joined scripts only', () => {
    expect(needsNoShaping('Łódź Ωμέγα Жук 3 3/4" ±½ – €')).toBe(true);
    expect(needsNoShaping('سلام')).toBe(false);
  });
  it('can be left out by replacing what needs it', () => {
    expect(plainlyPrintable('a مع b')).toBe('a \uFFFD\uFFFD b');
  });
});
