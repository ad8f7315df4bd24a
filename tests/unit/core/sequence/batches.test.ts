import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { jointBatches } from '../../../../src/core/sequence';

describe('jointBatches', () => {
  it('keeps a joint whole where it fits a batch', () => {
    const batches = jointBatches(
      [
        { id: 'a', length: 600 },
        { id: 'b', length: 600 },
      ],
      1000,
    );
    expect(batches.map(({ length }) => length)).toEqual([600, 600]);
  });
  it('splits a joint longer than a batch', () => {
    const [first, second, third] = jointBatches([{ id: 'a', length: 2500 }], 1000);
    expect(first!.parts).toEqual([{ id: 'a', from: 0, to: 1000 }]);
    expect(second!.parts).toEqual([{ id: 'a', from: 1000, to: 2000 }]);
    expect(third!.parts).toEqual([{ id: 'a', from: 2000, to: 2500 }]);
  });
  it('covers every joint once, in batches within the limit', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 1, max: 5000 }), { maxLength: 12 }),
        fc.integer({ min: 100, max: 4000 }),
        (lengths, longest) => {
          const batches = jointBatches(
            lengths.map((length, i) => ({ id: String(i), length })),
            longest,
          );
          lengths.forEach((length, i) => {
            const parts = batches.flatMap((batch) => batch.parts).filter(({ id }) => id === String(i));
            expect(parts[0]!.from).toBe(0);
            expect(parts.at(-1)!.to).toBe(length);
            parts.slice(1).forEach((part, k) => {
              expect(part.from).toBe(parts[k]!.to);
            });
          });
          for (const { length } of batches) expect(length).toBeLessThanOrEqual(longest + 1e-6);
        },
      ),
      { numRuns: 200 },
    );
  });
});
