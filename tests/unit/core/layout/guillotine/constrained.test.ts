import { describe, expect, it } from 'vitest';
import {
  type BuiltRectangle,
  constrainedGuillotine,
  type LimitedKind,
} from '../../../../../src/core/layout/guillotine';
import { randomFrom } from '../../../../simulate';

describe('constrainedGuillotine', () => {
  it('keeps to the limit of each kind', () => {
    const { best, exact } = constrainedGuillotine([{ width: 3, height: 2, value: 5, most: 4 }], 10, 5);
    expect(exact).toBe(true);
    expect(best!.value).toBe(20);
  });

  it('takes one of a group of positions', () => {
    const kinds = [
      { width: 3, height: 8, value: 24, most: 1, group: 0 },
      { width: 8, height: 3, value: 24, most: 1, group: 0 },
    ];
    expect(constrainedGuillotine(kinds, 20, 20).best!.value).toBe(24);
    expect(constrainedGuillotine(kinds, 9, 4).best).toMatchObject({ width: 8, height: 3 });
  });

  it('finds nothing where nothing fits', () => {
    expect(constrainedGuillotine([{ width: 30, height: 2, value: 5, most: 4 }], 10, 5)).toEqual({
      best: null,
      exact: true,
    });
  });

  it('says when it stopped before it was sure', () => {
    const kinds = Array.from({ length: 8 }, (_, k) => ({ width: 11 + k, height: 23 - k, value: 200 + k, most: 3 }));
    const stopped = constrainedGuillotine(kinds, 90, 90, 5);
    expect(stopped.exact).toBe(false);
    expect(stopped.best!.value).toBeGreaterThan(0);
  });

  it('agrees with trying every cut of every share of the pieces', () => {
    const random = randomFrom(3);
    for (let trial = 0; trial < 60; trial++) {
      const kinds: LimitedKind[] = Array.from({ length: 3 }, () => ({
        width: Math.round(random.between(1, 6)),
        height: Math.round(random.between(1, 6)),
        value: Math.round(random.between(1, 20)),
        most: Math.round(random.between(1, 2)),
      }));
      const { best, exact } = constrainedGuillotine(kinds, 9, 8);
      expect(exact).toBe(true);
      expect(best!.value).toBe(everyShare(kinds, 9, 8));
      expectSound(best!, kinds);
    }
  });
});

/** The rectangle is made up as it says. */
function expectSound(rectangle: BuiltRectangle, kinds: LimitedKind[]): void {
  const { build } = rectangle;
  if ('kind' in build) {
    expect(rectangle).toMatchObject({ width: kinds[build.kind]!.width, height: kinds[build.kind]!.height });
    return;
  }
  const { first, second, joined } = build;
  expect(rectangle.value).toBe(first.value + second.value);
  expect([...rectangle.counts]).toEqual([...first.counts].map((count, k) => count + second.counts[k]!));
  expect([rectangle.width, rectangle.height]).toEqual(
    joined === 'across'
      ? [first.width + second.width, Math.max(first.height, second.height)]
      : [Math.max(first.width, second.width), first.height + second.height],
  );
  expectSound(first, kinds);
  expectSound(second, kinds);
}

/** Greatest value by recursion over every cut and every share of the counts; for tiny cases. */
function everyShare(kinds: LimitedKind[], width: number, height: number): number {
  const known = new Map<string, number>();
  const value = (w: number, h: number, counts: number[]): number => {
    const key = `${w},${h},${counts.join()}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    let best = 0;
    kinds.forEach((kind, k) => {
      if (counts[k]! > 0 && kind.width <= w && kind.height <= h) best = Math.max(best, kind.value);
    });
    for (const part of shares(counts)) {
      const rest = counts.map((count, k) => count - part[k]!);
      if (!part.some((n) => n > 0) || !rest.some((n) => n > 0)) continue;
      for (let a = 1; a < w; a++) best = Math.max(best, value(a, h, part) + value(w - a, h, rest));
      for (let b = 1; b < h; b++) best = Math.max(best, value(w, b, part) + value(w, h - b, rest));
    }
    known.set(key, best);
    return best;
  };
  return value(
    width,
    height,
    kinds.map(({ most }) => most),
  );
}

function shares(counts: number[]): number[][] {
  return counts.reduce<number[][]>(
    (all, count) => all.flatMap((share) => Array.from({ length: count + 1 }, (_, n) => [...share, n])),
    [[]],
  );
}
