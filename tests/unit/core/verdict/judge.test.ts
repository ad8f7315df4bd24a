import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { Z_95 } from '../../../../src/core/reliability';
import { judge } from '../../../../src/core/verdict/judge';

const at = (value: number, half: number, limit: number | null, assumed = false) =>
  judge({ value, sd: half / Z_95, assumed }, limit);

describe('judge', () => {
  it('keeps the ± as a guard band on both sides of the limit', () => {
    expect(at(5, 1, 6)).toBe('within');
    expect(at(5.01, 1, 6)).toBe('cannot-tell');
    expect(at(6.99, 1, 6)).toBe('cannot-tell');
    expect(at(7.01, 1, 6)).toBe('beyond');
  });

  it('takes the limit itself as within where there is no doubt', () => {
    expect(at(6, 0, 6)).toBe('within');
    expect(at(6.0001, 0, 6)).toBe('beyond');
  });

  it('never tells while the ± is wider than what it is judged by', () => {
    expect(at(0, 7, 6)).toBe('cannot-tell');
  });

  it('judges nothing that is not measured or has no limit', () => {
    expect(at(50, 1, 6, true)).toBe('not-measured');
    expect(at(50, 1, null, true)).toBe('not-measured');
    expect(at(50, 1, null)).toBe('no-limit');
  });

  it('is alike either way of zero and never better for a larger deviation', () => {
    const rank = { within: 0, 'cannot-tell': 1, beyond: 2 } as Record<string, number>;
    const amount = fc.double({ min: 0, max: 50, noNaN: true });
    fc.assert(
      fc.property(amount, amount, amount, amount, (value, more, half, limit) => {
        expect(at(-value, half, limit)).toBe(at(value, half, limit));
        expect(rank[at(value + more, half, limit)]).toBeGreaterThanOrEqual(rank[at(value, half, limit)]!);
      }),
    );
  });
});
