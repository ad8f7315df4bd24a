import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { adjust } from '../../../../src/core/adjust';
import type { Reading } from '../../../../src/core/job-file';
import { updated } from '../../../../src/core/plan/knowledge';
import { rowsOf } from '../../../../src/core/plan/rows';
import { jobWith } from '../../../simulate';

const empty = adjust(jobWith([]));

/** Covariance of the parameters after a plumb reading, its standoff an unknown of the normal equations. */
function withStandoff(reading: Extract<Reading, { kind: 'plumb' }>): Matrix {
  const p = empty.model.parameters.length;
  const normal = Matrix.zeros(p + 1, p + 1);
  normal.setSubMatrix(inverse(empty.covariance), 0, 0);
  for (const { height, sd = 0.5 } of reading.gaps) {
    // gap = standoff − b, b = plumb y + bowUp y² + … at x = 0
    const row = [...new Array<number>(p).fill(0), 1];
    row[empty.model.parameters.findIndex(({ name }) => name === 'back.plumb')] = -height;
    row[empty.model.parameters.findIndex(({ name }) => name === 'back.bowUp')] = -(height ** 2);
    for (let i = 0; i <= p; i++) {
      for (let j = 0; j <= p; j++) normal.set(i, j, normal.get(i, j) + (row[i]! * row[j]!) / sd ** 2);
    }
  }
  return inverse(normal);
}

describe('rowsOf', () => {
  it.each([
    ['as the rule has it', undefined],
    ['of its own', 3],
  ])('eliminates the standoff of a plumb reading, the standard deviation of a gap %s', (_, sd) => {
    const reading: Reading = {
      id: 'p',
      kind: 'plumb',
      wall: 'back',
      at: 0,
      gaps: [
        { height: -600, value: 20 },
        { height: 100, value: 20, ...(sd !== undefined && { sd }) },
        { height: 900, value: 20 },
      ],
    };
    const knowledge = empty.covariance.to2DArray().map((line) => Float64Array.from(line));
    const after = updated(knowledge, rowsOf(reading, empty.alcove, {}));
    const expected = withStandoff(reading);
    const at = (name: string) => empty.model.parameters.findIndex((each) => each.name === name);
    for (const name of ['back.plumb', 'back.bowUp']) {
      const j = at(name);
      expect(after[j]![j]! / expected.get(j, j)).toBeCloseTo(1, 6);
    }
  });
});
