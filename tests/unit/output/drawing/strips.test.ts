import { describe, expect, it } from 'vitest';
import type { Point } from '../../../../src/core';
import { panelDrawing } from '../../../../src/output/drawing';
import { stripsAlong } from '../../../../src/output/drawing/strips';
import { fixtureJob, fixturePanel, fixtureResult } from '../fixture';

const area = (points: Point[]): number =>
  Math.abs(
    points.reduce((sum, [x, y], i) => {
      const [nx, ny] = points[(i + 1) % points.length]!;
      return sum + x * ny - nx * y;
    }, 0),
  ) / 2;

const sheet = { left: 0, right: 100, bottom: 0, top: 200 };

describe('stripsAlong', () => {
  it('gives a wedge between a leaning edge and the side of the sheet', () => {
    const [wedge, ...more] = stripsAlong(
      'left',
      'left',
      [
        [2, 0],
        [12, 200],
      ],
      sheet,
      sheet,
    );
    expect(more).toEqual([]);
    expect(wedge).toMatchObject({ edge: 'left', kind: 'sliver', widest: 12 });
    expect(area(wedge!.polygon)).toBeCloseTo(200 * 7, 9);
  });

  it('splits where the edge leaves the sheet', () => {
    const strips = stripsAlong(
      'right',
      'right',
      [
        [90, 0],
        [110, 200],
      ],
      sheet,
      sheet,
    );
    expect(strips.map(({ kind, widest }) => [kind, widest])).toEqual([
      ['sliver', 10],
      ['gap', 10],
    ]);
    expect(strips.map(({ polygon }) => area(polygon))).toEqual([500, 500]);
  });

  it('gives none along a kept edge', () => {
    expect(
      stripsAlong(
        'top',
        'top',
        [
          [0, 200],
          [100, 200],
        ],
        sheet,
        sheet,
      ),
    ).toEqual([]);
  });
});

describe('strips of a panel', () => {
  it('make up the sheet together with the panel, corners included', () => {
    const panel = fixturePanel({
      name: 'left',
      low: (v) => 9 + 0.003 * v,
      high: (v) => 765 + 0.002 * v,
      bottom: (u) => -744 - 0.002 * u,
      top: 980,
      datum: 9,
      sheet: { width: 815, height: 1800 },
      methods: { top: 'factory' },
      sd: 0.3,
    });
    const {
      sheet: { left, right, bottom, top },
      strips,
      outline,
    } = panelDrawing(panel, fixtureJob());
    expect(new Set(strips.map(({ kind }) => kind))).toEqual(new Set(['sliver']));
    const covered = strips.reduce((sum, { polygon }) => sum + area(polygon), area(outline));
    expect(covered).toBeCloseTo((right - left) * (top - bottom), 5);
  });

  it('calls the rest of a long sheet an offcut, and lets the slivers end at the panel', () => {
    const { strips, outline, sheet } = panelDrawing(fixtureResult().panels.right, fixtureJob());
    expect(strips.filter(({ kind }) => kind === 'offcut').map(({ edge }) => edge)).toEqual(['bottom']);
    const lowest = Math.min(...outline.map(([, y]) => y));
    expect(lowest - sheet.bottom).toBeGreaterThan(600);
    for (const { kind, polygon } of strips) {
      if (kind === 'sliver') for (const [, y] of polygon) expect(y).toBeGreaterThanOrEqual(lowest - 1e-9);
    }
  });
});
