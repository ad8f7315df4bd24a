import { describe, expect, it } from 'vitest';
import { colourWords } from '../../../../src/output/words';

describe('colourWords', () => {
  it.each([
    ['#ffffff', 'white'],
    ['#f4f3ef', 'off-white'],
    ['#4c5150', 'dark grey'],
    ['#000000', 'black'],
    ['#d9cbb6', 'light beige'],
    ['#2040c0', 'blue'],
    ['#c02020', 'red'],
  ])('calls %s %s', (colour, words) => {
    expect(colourWords(colour)).toBe(`${words} (${colour})`);
  });
});
