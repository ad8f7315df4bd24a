import { describe, expect, it } from 'vitest';
import { panelEdges } from '../../../../src/core/panel';
import { boundaryOf } from '../../../../src/core/panel/boundary';
import { cutEdge, cutMethod } from '../../../../src/core/panel/cutEdge';
import { alcoveOf } from '../skewedAlcove';
import { covarianceOf, jobOf } from './fitting';

const still = { toSheet: (u: number, v: number): [number, number] => [u, v], strain: 0, strainAt: () => 0 };
const laid = { left: -770, right: 770, bottom: -800, top: 980 };
const cutOf = (values: Record<string, number>, side: 'lower' | 'upper' | 'bottom' | 'top', tolerance = 0.8, sd = 0) => {
  const boundary = boundaryOf(panelEdges(alcoveOf(values), jobOf(), 'back'));
  const sheetSide = { lower: 'left', upper: 'right', bottom: 'bottom', top: 'top' } as const;
  return cutEdge(boundary[side], boundary[side].at, still, laid, sheetSide[side], covarianceOf(sd), tolerance);
};

describe('cutEdge', () => {
  it("measures the sliver from the sheet's edge, on every side", () => {
    expect(cutOf({}, 'lower').edge.sliver).toEqual({ min: expect.closeTo(12, 9), max: expect.closeTo(12, 9) });
    expect(cutOf({}, 'upper').edge.sliver).toEqual({ min: expect.closeTo(12, 9), max: expect.closeTo(12, 9) });
    expect(cutOf({}, 'bottom').edge.sliver).toEqual({ min: expect.closeTo(63, 9), max: expect.closeTo(63, 9) });
    expect(cutOf({}, 'top').edge).toMatchObject({ sliver: { min: 0, max: 0 }, method: 'factory' });
  });

  it('marks a leaning edge at bottom, middle and top, with a sliver that grows 10 mm a metre', () => {
    const { edge, gaps } = cutOf({ 'left.plumb': 0.01 }, 'lower');
    expect(edge.marks.map(({ v }) => v)).toEqual([-737, 121.5, 980].map((v) => expect.closeTo(v, 6)));
    for (const { u, v, sliver, sheet } of edge.marks) {
      expect(u).toBeCloseTo(-758 + 0.01 * v, 9);
      expect(sliver).toBeCloseTo(12 + 0.01 * v, 9);
      expect(sheet).toEqual([u, v]);
    }
    expect(edge.misfit).toBeLessThan(1e-9);
    expect(gaps).toEqual([]);
  });

  it('marks a bowed edge as often as the tolerance asks', () => {
    const k = 1e-5; // 1717 mm high: chords of length c leave k c²/4
    for (const tolerance of [4, 0.8, 0.2]) {
      const { edge } = cutOf({ 'left.bowUp': k }, 'lower', tolerance);
      const needed = Math.ceil(1717 / Math.sqrt((4 * tolerance) / k));
      expect(edge.marks).toHaveLength(Math.max(2, needed) + 1);
      expect(edge.misfit).toBeLessThanOrEqual(tolerance);
    }
  });

  it('reports the stretch that the sheet does not reach', () => {
    const { edge, gaps } = cutOf({ 'left.plumb': 0.02 }, 'lower'); // sheet ends at −770: short below v = −600
    expect(gaps).toEqual([
      {
        edge: 'left',
        from: [expect.closeTo(-758 - 14.74, 6), -737],
        to: [expect.closeTo(-770, 6), expect.closeTo(-600, 6)],
        max: expect.closeTo(2.74, 6),
      },
    ]);
    expect(edge.sliver.min).toBeCloseTo(-2.74, 6);
  });

  it('gives each mark the standard deviation of the edge there', () => {
    // independent parameters, each with sd 1e-3 in its unit: at v = 980 the left wall's y² counts most
    const { edge } = cutOf({}, 'lower', 0.8, 1e-3);
    const z = 2;
    for (const { v, sd } of edge.marks) {
      const both = [z, 8].map((face) => 1e-3 * Math.hypot(1, v, face, face * v, v * v, face * face));
      expect(both.some((expected) => Math.abs(sd - expected) < 1e-6 * expected)).toBe(true);
    }
  });
});

describe('cutMethod', () => {
  it('keeps a factory edge that is within the tolerance', () => {
    expect(cutMethod(0.8, true, 0.8)).toBe('factory');
    expect(cutMethod(-3, true, 0.8)).toBe('factory');
  });

  it('planes under a quarter inch, straight or not', () => {
    expect(cutMethod(0.81, true, 0.8)).toBe('plane');
    expect(cutMethod(6.34, false, 0.8)).toBe('plane');
  });

  it('snaps what is straight and saws what is not', () => {
    expect(cutMethod(6.35, true, 0.8)).toBe('knife');
    expect(cutMethod(6.35, false, 0.8)).toBe('jigsaw');
  });
});
