import { describe, expect, it } from 'vitest';
import { type Monomial, polynomialBasis } from '../../../../src/core/surface';

const TERMS: Monomial[] = [
  [0, 0],
  [0, 1],
  [1, 0],
  [1, 1],
  [0, 2],
  [2, 0],
  [3, 2],
];
const basis = polynomialBasis(TERMS);

function derivatives(a: number, b: number, da: number, db: number): number[] {
  const out = new Float64Array(TERMS.length);
  basis.fill(out, 0, a, b, da, db);
  return [...out].map((each) => each + 0); // −0 is 0
}

describe('polynomialBasis', () => {
  it('has the terms as values', () => {
    expect(basis.count).toBe(7);
    expect(derivatives(3, -2, 0, 0)).toEqual([1, -2, 3, -6, 4, 9, 108]);
    expect(derivatives(0, 0, 0, 0)).toEqual([1, 0, 0, 0, 0, 0, 0]);
  });

  it('has their derivatives', () => {
    expect(derivatives(3, -2, 1, 0)).toEqual([0, 0, 1, -2, 0, 6, 108]);
    expect(derivatives(3, -2, 0, 1)).toEqual([0, 1, 0, 3, -4, 0, -108]);
    expect(derivatives(3, -2, 2, 0)).toEqual([0, 0, 0, 0, 0, 2, 72]);
    expect(derivatives(3, -2, 1, 1)).toEqual([0, 0, 0, 1, 0, 0, -108]);
    expect(derivatives(3, -2, 0, 2)).toEqual([0, 0, 0, 0, 2, 0, 54]);
    expect(derivatives(3, -2, 3, 2)).toEqual([0, 0, 0, 0, 0, 0, 12]);
    expect(derivatives(3, -2, 4, 0)).toEqual([0, 0, 0, 0, 0, 0, 0]);
  });

  it('writes from its offset on and nothing else', () => {
    const out = Float64Array.of(8, 8, 8, 8);
    polynomialBasis([
      [1, 0],
      [0, 1],
    ]).fill(out, 1, 5, 6, 0, 0);
    expect([...out]).toEqual([8, 5, 6, 8]);
  });
});
