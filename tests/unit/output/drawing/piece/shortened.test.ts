import { describe, expect, it } from 'vitest';
import { solve } from '../../../../../src/core';
import { pieceDrawing, shortened } from '../../../../../src/output/drawing';
import { fixtureJob } from '../../fixture';

const job = fixtureJob({ shelves: [{}] });
const { trim, shelves } = solve(job).pieces;

describe('shortened', () => {
  it('leaves a piece that is not long as it is', () => {
    const shelf = pieceDrawing(shelves[0]!, job);
    expect(shortened(shelf)).toBe(shelf);
  });

  it('keeps distances between marks of one end, order along the piece, and every word', () => {
    for (const piece of trim) {
      const whole = pieceDrawing(piece, job);
      const short = shortened(whole);
      const axis = whole.axis === 'x' ? 0 : 1;
      expect(short.breaks.length).toBeGreaterThan(0);
      const pairs = whole.edges.flatMap(({ marks }, e) =>
        marks.map((mark, i) => [mark, short.edges[e]!.marks[i]!] as const),
      );
      for (const [mark, moved] of pairs) {
        expect(moved.lines).toEqual(mark.lines);
        expect(moved.at[1 - axis]).toBe(mark.at[1 - axis]);
      }
      const across = axis === 0 ? whole.bounds.top - whole.bounds.bottom : whole.bounds.right - whole.bounds.left;
      for (const [a, movedA] of pairs) {
        for (const [b, movedB] of pairs) {
          const [apart, now] = [b.at[axis] - a.at[axis], movedB.at[axis] - movedA.at[axis]];
          expect(Math.sign(now) * Math.sign(apart)).toBeGreaterThanOrEqual(0);
          if (Math.abs(apart) < across) expect(now).toBeCloseTo(apart, 9);
          expect(Math.abs(now)).toBeLessThanOrEqual(Math.abs(apart) + 1e-9);
        }
      }
    }
  });
});
