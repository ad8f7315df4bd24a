import { describe, expect, it } from 'vitest';
import { Heap } from '../../../../../src/core/layout/guillotine/heap';
import { randomFrom } from '../../../../simulate';

describe('Heap', () => {
  it('gives back what was put in, in order', () => {
    const random = randomFrom(5);
    const heap = new Heap<number>((a, b) => a > b);
    const values = Array.from({ length: 400 }, () => Math.round(random.between(0, 100)));
    for (const value of values) heap.push(value);
    const out = values.map(() => heap.pop());
    expect(out).toEqual(values.toSorted((a, b) => b - a));
    expect(heap.pop()).toBeUndefined();
  });

  it('keeps the order when entries come and go', () => {
    const heap = new Heap<number>((a, b) => a < b);
    for (const value of [5, 2, 8]) heap.push(value);
    expect(heap.pop()).toBe(2);
    heap.push(1);
    heap.push(9);
    expect([heap.pop(), heap.pop(), heap.pop(), heap.pop(), heap.pop()]).toEqual([1, 5, 8, 9, undefined]);
  });
});
