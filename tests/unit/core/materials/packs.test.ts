import { describe, expect, it } from 'vitest';
import { packsFor } from '../../../../src/core/materials';

describe('packsFor', () => {
  it('buys whole packs and tells what is left', () => {
    expect(packsFor(701, 300)).toEqual({ size: 300, count: 3, leftOver: 199 });
  });
  it('buys no more than fits exactly', () => expect(packsFor(600, 300)).toEqual({ size: 300, count: 2, leftOver: 0 }));
  it('is not pushed over by rounding', () => expect(packsFor(0.1 + 0.2, 0.3).count).toBe(1));
  it('buys nothing for nothing', () => expect(packsFor(0, 300).count).toBe(0));
});
