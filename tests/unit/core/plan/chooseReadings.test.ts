import { describe, expect, it } from 'vitest';
import type { Reading } from '../../../../src/core/job-file';
import { type Candidate, chooseReadings } from '../../../../src/core/plan/chooseReadings';
import { type Knowledge, updated, watch } from '../../../../src/core/plan/knowledge';

const nothing: Knowledge = [100, 100, 100].map((variance, i) => new Float64Array(3).fill(variance, i, i + 1));
const gradients = [Float64Array.of(1, 0, 0), Float64Array.of(0, 1, 0), Float64Array.of(0, 0, 1)];

const candidate = (effort: number, ...rows: number[][]): Candidate => ({
  reading: { id: `${rows}` } as Reading,
  rows: rows.map((row) => Float64Array.from(row)),
  effort,
});
const largestAfter = (chosen: readonly Candidate[]): number =>
  Math.max(
    ...watch(
      updated(
        nothing,
        chosen.flatMap(({ rows }) => rows),
      ),
      gradients,
    ).variances,
  );

describe('chooseReadings', () => {
  const candidates = [
    candidate(3, [1, -2, 0], [0, 0, -2]),
    candidate(1, [-2, -3, -2], [2, -1, -2]),
    candidate(1, [3, 2, -3], [2, 3, -2]),
    candidate(1, [2, -2, 1], [2, 1, -2]),
    candidate(2, [2, 2, 0]),
    candidate(1, [0, 3, 0]),
  ];
  const goal = { gradients, variance: 0.15 };

  it('reaches the goal', () => {
    expect(largestAfter(chooseReadings(nothing, candidates, goal))).toBeLessThan(0.15);
  });

  it('leaves out the last reading too, once an exchange has made it idle', () => {
    const chosen = chooseReadings(nothing, candidates, goal);
    for (const each of chosen) {
      expect(largestAfter(chosen.filter((other) => other !== each))).toBeGreaterThan(0.15);
    }
    expect(largestAfter(chosen.slice(0, -1))).toBeGreaterThan(0.15);
  });

  it('takes all that help where the goal is out of reach', () => {
    const chosen = chooseReadings(nothing, candidates, { gradients, variance: 1e-3 });
    expect(new Set(chosen).size).toBe(candidates.length);
    for (const each of chosen) expect(chosen.filter((other) => other === each)).toHaveLength(2);
  });
});
