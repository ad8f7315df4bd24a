import { describe, expect, it } from 'vitest';
import type { Mark, Panel } from '../../../src/core';
import type { Vec3 } from '../../../src/scene/geometry';
import { coveredOutline } from '../../../src/scene/geometry/clip-to-sheet';
import { cutStrips } from '../../../src/scene/geometry/cut-strips';
import type { AlcoveShape } from '../../../src/scene/geometry/shape';
import { simplified, simplifiedRing } from '../../../src/scene/geometry/simplify';
import { solvedDemo } from './solvedDemo';

const flat = { back: () => 0, side: { left: () => -750, right: () => 750 } } as unknown as AlcoveShape;
const stay = (point: Vec3): Vec3 => point;
const mark = (u: number, v: number, sliver: number): Mark => ({ u, v, sliver, sd: 0.5, sheet: [u, v] });
const backPanel = (marks: Mark[]): Panel => ({
  ...solvedDemo().result.panels.back,
  edges: { left: { marks, sliver: { min: 0, max: 0 }, method: 'plane', misfit: 0 } },
});

const xs = (positions: number[]) => positions.filter((_, i) => i % 3 === 0);

describe('cutStrips', () => {
  it('draws a growing sliver outwards and tells its widest place', () => {
    const [strip, ...others] = cutStrips(flat, backPanel([mark(-700, 0, 2), mark(-700, 1000, 12)]), 2, 1, stay);
    expect(others).toEqual([]);
    expect(strip).toMatchObject({ kind: 'sliver', edge: 'left', widest: { width: 12 } });
    expect(strip!.widest.at[0]).toBeCloseTo(-712, 9);
    expect(Math.min(...xs(strip!.mesh.positions))).toBeCloseTo(-712, 9);
    expect(Math.max(...xs(strip!.mesh.positions))).toBeCloseTo(-700, 9);
  });

  it('splits an edge that is a sliver below and a gap above where it changes', () => {
    const strips = cutStrips(flat, backPanel([mark(-700, 0, 4), mark(-700, 1000, -12)]), 2, 1, stay);
    expect(strips.map(({ kind, widest }) => [kind, widest.width])).toEqual([
      ['sliver', 4],
      ['gap', 12],
    ]);
    const top = Math.max(...strips[0]!.mesh.positions.filter((_, i) => i % 3 === 1));
    expect(top).toBeGreaterThanOrEqual(250);
    expect(top).toBeLessThanOrEqual(375 + 1e-9);
    expect(Math.max(...xs(strips[1]!.mesh.positions))).toBeCloseTo(-688, 9);
  });

  it("draws the sheet's edge straight where the wall is drawn five times out of true", () => {
    const lean = ([x, y, z]: Vec3): Vec3 => [x + 4 * 0.01 * y, y, z];
    const marks = [0, 500, 1000].map((y) => mark(-700 + 0.01 * y, y, 1 + 0.01 * y));
    const [strip] = cutStrips(flat, backPanel(marks), 2, 5, lean);
    const outer = strip!.mesh.positions.slice(strip!.mesh.positions.length / 2);
    for (const x of xs(outer)) expect(x).toBeCloseTo(-701, 6);
  });

  it('draws only the first part of a wide piece but tells its whole width', () => {
    const [strip] = cutStrips(flat, backPanel([mark(-700, 0, 600), mark(-700, 1000, 604)]), 2, 1, stay);
    expect(Math.min(...xs(strip!.mesh.positions))).toBeCloseTo(-744, 9);
    expect(strip!.widest.width).toBe(604);
  });

  it('draws nothing along a factory edge', () => {
    expect(cutStrips(flat, backPanel([mark(-700, 0, 0), mark(-700, 1000, 0.1)]), 2, 20, stay)).toEqual([]);
  });
});

describe('coveredOutline', () => {
  it('cuts off what lies beyond the sheet and keeps the rest', () => {
    const outline: [number, number][] = [
      [0, 0],
      [100, 0],
      [100, 50],
      [0, 50],
    ];
    const sheet = { left: -5, right: 80, bottom: -5, top: 60 };
    const covered = coveredOutline({ outline, flat: { outline, sheet } as Panel['flat'] });
    expect(covered.map(([x]) => x).sort((a, b) => a - b)).toEqual([0, 0, 80, 80]);
  });
});

describe('simplified', () => {
  it('keeps within its tolerance and keeps corners', () => {
    const arc = Array.from({ length: 181 }, (_, i): [number, number] => [
      100 * Math.cos((i * Math.PI) / 180),
      100 * Math.sin((i * Math.PI) / 180),
    ]);
    const few = simplified(arc, 0.5);
    expect(few.length).toBeLessThan(30);
    expect(few[0]).toEqual(arc[0]);
    expect(few[few.length - 1]).toEqual(arc[180]);
    few.slice(1).forEach((point, i) => {
      const half = Math.hypot(point[0] - few[i]![0], point[1] - few[i]![1]) / 2;
      expect(100 - Math.sqrt(100 ** 2 - half ** 2)).toBeLessThan(0.5);
    });
  });

  it('reduces a ring with points along its sides to its corners', () => {
    const side = (from: [number, number], to: [number, number]) =>
      Array.from({ length: 10 }, (_, i): [number, number] => [
        from[0] + ((to[0] - from[0]) * i) / 10,
        from[1] + ((to[1] - from[1]) * i) / 10,
      ]);
    const ring = [
      ...side([0, 0], [10, 0]),
      ...side([10, 0], [10, 5]),
      ...side([10, 5], [0, 5]),
      ...side([0, 5], [0, 0]),
    ];
    expect(simplifiedRing(ring, 0.01)).toEqual([
      [0, 0],
      [10, 0],
      [10, 5],
      [0, 5],
    ]);
  });
});
