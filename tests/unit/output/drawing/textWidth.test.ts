import { describe, expect, it } from 'vitest';
import { type MeasureText, wrapText } from '../../../../src/output/drawing';

const oneEach: MeasureText = (text) => text.length;

describe('wrapText', () => {
  it('breaks between words', () => {
    expect(wrapText('cut the back edge', 8, 1, oneEach)).toEqual(['cut the', 'back', 'edge']);
  });
  it('breaks inside a word that is wider than the line', () => {
    expect(wrapText('a abcdefgh', 4, 1, oneEach)).toEqual(['a', 'abcd', 'efgh']);
  });
  it('gives one empty line for nothing', () => {
    expect(wrapText('', 4, 1, oneEach)).toEqual(['']);
  });
  it('loses no character', () => {
    const text = 'one twothreefour five';
    expect(wrapText(text, 3, 1, oneEach).join('')).toBe(text.replaceAll(' ', ''));
  });
});
