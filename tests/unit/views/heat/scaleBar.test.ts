import { describe, expect, it } from 'vitest';
import { ticksOf } from '../../../../src/views/heat/ScaleBar';

const texts = (from: number, count: number) => ticksOf(from, count, String).map(({ text }) => text);

describe('ticksOf', () => {
  it('tells every figure where there are few', () => {
    expect(texts(-2, 2)).toEqual(['-2', '-1', '0', '1', '2']);
    expect(texts(0, 3)).toEqual(['0', '1', '2', '3']);
  });
  it('tells the ends, the middle and none alone where there are many', () => {
    expect(texts(0, 6)).toEqual(['0', null, null, '3', null, null, '6']);
    expect(texts(-4, 4)).toEqual(['-4', null, '-2', null, '0', null, '2', null, '4']);
  });
});
