import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CurvePoint, fewestChords, fewestMarks, misfitOf } from '../../../../src/core/panel/fewestMarks';

const TOLERANCE = 0.8;

/** A curve of up to nine samples with gaps of a few mm between and offsets of the order of the tolerance. */
const curve = fc
  .array(fc.tuple(fc.integer({ min: 1, max: 60 }), fc.integer({ min: -40, max: 40 })), { minLength: 2, maxLength: 9 })
  .map((steps) => {
    let along = -100;
    return steps.map(([run, sixteenths]): CurvePoint => {
      along += run;
      return { along, at: sixteenths / 16 };
    });
  });

/** Fewest samples, both ends and `through` among them, whose chords keep within the tolerance: by trying them all. */
function fewestByTrial(points: CurvePoint[], tolerance: number, through: number[] = []): number {
  const last = points.length - 1;
  let fewest = Number.POSITIVE_INFINITY;
  for (let set = 0; set < 2 ** points.length; set++) {
    const marks = points.flatMap((_, i) => (set & (1 << i) ? [i] : []));
    if (![0, last, ...through].every((i) => marks.includes(i))) continue;
    if (marks.length < fewest && misfitOf(points, marks) <= tolerance) fewest = marks.length;
  }
  return fewest;
}

describe('fewestChords', () => {
  it('joins both ends by as few chords as any choice of samples, within the tolerance', () => {
    fc.assert(
      fc.property(curve, (points) => {
        const marks = fewestChords(points, TOLERANCE);
        expect(marks[0]).toBe(0);
        expect(marks.at(-1)).toBe(points.length - 1);
        expect(misfitOf(points, marks)).toBeLessThanOrEqual(TOLERANCE + 1e-12);
        expect(marks).toHaveLength(fewestByTrial(points, TOLERANCE));
      }),
      { seed: 4, numRuns: 300 },
    );
  });

  it('follows a curve that does not advance sample by sample', () => {
    const fold: CurvePoint[] = [
      [0, 0],
      [10, 0.1],
      [10, -40],
      [9.5, -80],
      [20, -80.2],
      [30, -80],
    ].map(([along, at]) => ({ along: along!, at: at! }));
    const marks = fewestChords(fold, TOLERANCE);
    expect(marks).toEqual([0, 1, 2, 3, 5]);
  });

  it('balances equally few chords', () => {
    const bow = Array.from({ length: 41 }, (_, i): CurvePoint => ({ along: 25 * i, at: 4e-6 * (25 * i - 500) ** 2 }));
    expect(fewestChords(bow, 0.3)).toEqual([0, 20, 40]);
  });
});

describe('fewestMarks', () => {
  it('never gives fewer than both ends and the middle', () => {
    const straight = Array.from({ length: 17 }, (_, i): CurvePoint => ({ along: 50 * i, at: 0.01 * 50 * i }));
    expect(fewestMarks(straight, TOLERANCE)).toEqual([0, 8, 16]);
    const uneven = [0, 10, 20, 30, 90, 100].map((along): CurvePoint => ({ along, at: 0 }));
    expect(fewestMarks(uneven, TOLERANCE)).toEqual([0, 3, 5]);
    expect(fewestMarks(uneven.slice(0, 2), TOLERANCE)).toEqual([0, 1]);
  });

  it('is the fewest through the middle where two ends would do, else the fewest', () => {
    fc.assert(
      fc.property(curve, (points) => {
        fc.pre(points.length > 2);
        const marks = fewestMarks(points, TOLERANCE);
        expect(misfitOf(points, marks)).toBeLessThanOrEqual(TOLERANCE + 1e-12);
        expect(marks.length).toBeGreaterThanOrEqual(3);
        const free = fewestByTrial(points, TOLERANCE);
        if (free > 2) expect(marks).toHaveLength(free);
        else {
          const target = (points[0]!.along + points.at(-1)!.along) / 2;
          const off = (i: number): number => Math.abs(points[i]!.along - target);
          const middle = marks.filter((i) => i > 0 && i < points.length - 1).sort((a, b) => off(a) - off(b))[0]!;
          expect(off(middle)).toBe(Math.min(...points.slice(1, -1).map((_, i) => off(i + 1))));
          expect(marks).toHaveLength(fewestByTrial(points, TOLERANCE, [middle]));
        }
      }),
      { seed: 6, numRuns: 300 },
    );
  });

  it('needs more marks the tighter the tolerance', () => {
    const bow = Array.from({ length: 129 }, (_, i): CurvePoint => ({ along: 13 * i, at: 1e-5 * (13 * i - 830) ** 2 }));
    // a chord of length c over k s² leaves k c²/4
    const counts = [8, 2, 0.5, 0.125].map((tolerance) => fewestMarks(bow, tolerance).length);
    expect(counts).toEqual([3, 3, 5, 9]);
  });
});

describe('misfitOf', () => {
  it('is the largest distance across between joins and samples', () => {
    const points = [
      [0, 0],
      [10, 3],
      [20, 0],
      [30, -1],
      [40, 0],
    ].map(([along, at]): CurvePoint => ({ along: along!, at: at! }));
    expect(misfitOf(points, [0, 4])).toBe(3);
    expect(misfitOf(points, [0, 1, 4])).toBe(2);
    expect(misfitOf(points, [0, 1, 2, 4])).toBe(1);
    expect(misfitOf(points, [0, 1, 2, 3, 4])).toBe(0);
  });
});
