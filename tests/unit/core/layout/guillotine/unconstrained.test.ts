import { describe, expect, it } from 'vitest';
import { unconstrainedGuillotine } from '../../../../../src/core/layout/guillotine';
import { randomFrom } from '../../../../simulate';

describe('unconstrainedGuillotine', () => {
  it('cuts a kind as often as it fits, in its own position only', () => {
    const table = unconstrainedGuillotine([{ width: 3, height: 2, value: 5 }], 10, 5);
    expect(table.at(10, 5)).toBe(3 * 2 * 5);
    expect(table.at(2, 5)).toBe(0);
  });

  it('agrees with trying every cut at every whole unit', () => {
    const random = randomFrom(11);
    for (let trial = 0; trial < 40; trial++) {
      const kinds = Array.from({ length: 3 }, () => ({
        width: Math.round(random.between(1, 7)),
        height: Math.round(random.between(1, 7)),
        value: Math.round(random.between(1, 20)),
      }));
      expect(unconstrainedGuillotine(kinds, 13, 11).at(13, 11)).toBe(everyCut(kinds, 13, 11));
    }
  });
});

function everyCut(kinds: { width: number; height: number; value: number }[], width: number, height: number): number {
  const value = Array.from({ length: width + 1 }, () => new Array<number>(height + 1).fill(0));
  for (let w = 1; w <= width; w++) {
    for (let h = 1; h <= height; h++) {
      let best = Math.max(0, ...kinds.filter((kind) => kind.width <= w && kind.height <= h).map((kind) => kind.value));
      for (let a = 1; a < w; a++) best = Math.max(best, value[a]![h]! + value[w - a]![h]!);
      for (let b = 1; b < h; b++) best = Math.max(best, value[w]![b]! + value[w]![h - b]!);
      value[w]![h] = best;
    }
  }
  return value[width]![height]!;
}
