// Pythagoras (3-4-5) and the law of cosines.
import { describe, expect, it } from 'vitest';
import { type Reading, solve } from '../../src/core';
import { fullPlan, jobWith, withSd } from '../simulate';
import { box } from './box';

const INCH = 25.4;

/** Inside angle at the left corner from one 18-24-30 in check, the readings of a box besides, its squareness unread. */
function angleFromCheck(diagonal: number): number {
  const unread = new Set(['angle', 'square', 'span', 'tape-to-rim', 'diagonal']);
  const others = withSd(
    fullPlan(box()).filter(({ kind }) => !unread.has(kind)),
    0.001,
  );
  const check: Reading = {
    id: 'check',
    kind: 'square',
    side: 'left',
    height: 0,
    alongBack: 24 * INCH,
    alongSide: 18 * INCH,
    value: diagonal,
    sd: 0.001,
  };
  const { corners } = solve(jobWith([...others, check]));
  return corners.left.angle.find(({ height }) => height === 0)!.value;
}

describe('a 3-4-5 check in the corner', () => {
  it('closes at 30 in where the corner is square', () => {
    expect(angleFromCheck(30 * INCH)).toBeCloseTo(90, 4);
  });

  it.each([29.75, 29.9375, 30.0625, 30.25])('gives the angle by the law of cosines at %s in', (inches) => {
    const cosine = (24 ** 2 + 18 ** 2 - inches ** 2) / (2 * 24 * 18);
    expect(angleFromCheck(inches * INCH)).toBeCloseTo((Math.acos(cosine) * 180) / Math.PI, 3);
  });
});
