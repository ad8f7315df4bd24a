import { describe, expect, it } from 'vitest';
import {
  applyChoice,
  SHELF_COUNTS,
  SHELF_SIZES,
  type ShelfSet,
  shelf as shelfSchema,
  shelfSetOf,
  shelvesOf,
  solve,
} from '../../../../src/core';
import { plainlyTrimmedDemo } from '../../scene/solvedDemo';

const sets = SHELF_COUNTS.flatMap((count) =>
  (['left', 'right', 'both'] as const).flatMap((corners) =>
    SHELF_SIZES.flatMap((size) =>
      (['round', 'straight', 'returned'] as const).map((front): ShelfSet => ({ count, corners, size, front })),
    ),
  ),
);

describe('shelvesOf', () => {
  it.each([700, 1100, 1500, 2000])('keeps every set within reach and apart on panels %i mm tall', (tall) => {
    for (const set of sets) {
      const shelves = shelvesOf(set, tall);
      expect(shelves).toHaveLength(set.count * (set.corners === 'both' ? 2 : 1));
      expect(new Set(shelves.map(({ id }) => id)).size).toBe(shelves.length);
      for (const each of shelves) {
        expect(shelfSchema.parse(each)).toEqual(each);
        expect(each.aboveRim).toBeGreaterThanOrEqual(300);
        expect(each.aboveRim).toBeLessThanOrEqual(Math.max(300, Math.min(1150, tall - 300)));
      }
      const heights = shelves.filter(({ corner }) => corner === shelves[0]!.corner).map(({ aboveRim }) => aboveRim);
      heights.slice(1).forEach((height, i) => {
        expect(height).toBeGreaterThan(heights[i]!);
      });
    }
  });

  it('is recognised again', () => {
    for (const set of sets) expect(shelfSetOf(shelvesOf(set, 1500))).toEqual(set);
    expect(shelfSetOf([])).toBeNull();
  });

  it('stands in a choice of the job as so many shelves', () => {
    const { job } = plainlyTrimmedDemo();
    const shelves = shelvesOf({ count: 3, corners: 'left', size: SHELF_SIZES[1], front: 'round' }, 1500);
    const result = solve(applyChoice(job, { id: 'three', shelves }));
    expect(result.pieces.shelves.map(({ corner }) => corner)).toEqual(['left', 'left', 'left']);
    expect(result.problems.filter(({ where }) => where.startsWith('shelves'))).toEqual([]);
  });
});
