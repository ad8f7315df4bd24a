import { describe, expect, it } from 'vitest';
import { fitPanel, type PanelName, polygonArea } from '../../../../src/core/panel';
import { alcoveOf, alcoveWith, skewedParameters } from '../skewedAlcove';
import { covarianceOf, fitted, jobOf } from './fitting';

const PANELS: PanelName[] = ['back', 'left', 'right'];
const EDGES = {
  back: ['left', 'right', 'bottom', 'top'],
  left: ['back', 'front', 'bottom', 'top'],
  right: ['back', 'front', 'bottom', 'top'],
};

describe('fitPanel', () => {
  it('fits a true box exactly', () => {
    const { panel, problems } = fitted(alcoveOf({}), 'back');
    expect(problems).toEqual([]);
    expect(panel.area).toBeCloseTo(1516 * 1717, 5);
    expect(panel.flat.sheet).toEqual({
      left: expect.closeTo(-915, 9),
      right: expect.closeTo(915, 9),
      top: expect.closeTo(980, 9),
      bottom: expect.closeTo(-1460, 9),
    });
    expect(panel.edges.left).toMatchObject({
      method: 'knife',
      sliver: { min: expect.closeTo(157, 9), max: expect.closeTo(157, 9) },
    });
    expect(panel.edges.top!.method).toBe('factory');
    expect(panel).toMatchObject({ thickness: 6, bedMax: expect.closeTo(2, 9), strainMax: 0, worst95: 0 });
    expect(fitted(alcoveOf({}), 'left').panel.area).toBeCloseTo((755 - 10) * 1717, 5);
  });

  it.each(PANELS)('names the edges of the %s panel and gives all their marks both places', (name) => {
    const { panel } = fitted(alcoveWith(skewedParameters(3)), name);
    expect(Object.keys(panel.edges)).toEqual(EDGES[name]);
    for (const edge of Object.values(panel.edges)) {
      expect(edge.marks.length).toBeGreaterThanOrEqual(3);
      for (const { u, v, sheet } of edge.marks) expect(Math.hypot(sheet[0] - u, sheet[1] - v)).toBeLessThan(5);
    }
  });

  it.each(PANELS)('runs the outline of the %s panel counter-clockwise, on the wall and flat', (name) => {
    for (let seed = 1; seed <= 8; seed++) {
      for (const flexible of [false, true]) {
        const { panel } = fitted(alcoveWith(skewedParameters(seed)), name, { fit: { flexible } });
        expect(polygonArea(panel.outline)).toBeGreaterThan(1e6);
        expect(panel.area).toBe(polygonArea(panel.flat.outline));
        expect(panel.flat.outline).toHaveLength(panel.outline.length);
      }
    }
  });

  it('reports every stretch that the sheet does not cover, with its size', () => {
    const { panel, problems } = fitted(alcoveOf({ 'left.plumb': 0.01 }), 'back', {
      sheets: {
        back: { width: 1510, height: 1700 },
        left: { width: 815, height: 2440 },
        right: { width: 815, height: 2440 },
      },
    });
    // 758 + 0.01·737 to the left below, 758 − 9.8 above; centred, the sheet is short by 6.69 mm a side at the foot
    expect(panel.gaps.map(({ edge }) => edge)).toEqual(['left', 'right', 'bottom']);
    const short = (758 + 7.37 + 758 - 1510) / 2;
    expect(panel.gaps[0]!.max).toBeCloseTo(short, 6);
    expect(panel.gaps[0]!.to[1]).toBeCloseTo(-737 + short / 0.01, 4);
    expect(panel.gaps[1]!.max).toBeCloseTo(short, 6);
    expect(panel.gaps[2]).toMatchObject({ max: expect.closeTo(17, 6) });
    expect(problems).toEqual(
      panel.gaps.map(({ edge, max }) => ({
        where: 'panels.back',
        what: `the sheet falls short at the ${edge} edge; take a larger sheet or lay it otherwise`,
        howMuch: max,
      })),
    );
  });

  it('draws level line and plumb datum across the sheet', () => {
    const back = fitted(alcoveOf({ 'back.plumb': 0.01 }), 'back').panel.flat;
    const length = Math.hypot(1, 0.01);
    expect(back.plumbDatum).toEqual({
      at: 0,
      line: [-737, 980].map((v) => [expect.closeTo(0, 9), expect.closeTo(v * length, 6)]),
    });
    expect(back.levelLine).toEqual([
      [expect.closeTo(-758, 6), 0],
      [expect.closeTo(758, 6), 0],
    ]);
    const left = fitted(alcoveOf({}), 'left').panel.flat;
    expect(left.plumbDatum.at).toBeCloseTo(10, 9);
    expect(left.levelLine[1]).toEqual([expect.closeTo(755, 9), 0]);
  });

  it('says how much a rigid sheet stands off and what a sheet that follows is strained', () => {
    const alcove = alcoveOf({ 'back.bowUp': 1e-5 });
    const half = (980 + 737) / 2;
    const rigid = fitted(alcove, 'back').panel;
    expect(rigid.bedMax - 2).toBeCloseTo(1e-5 * half ** 2, 2);
    expect(rigid.strainMax).toBe(0);
    const follows = fitted(alcove, 'back', { fit: { flexible: true } }).panel;
    expect(follows.bedMax).toBe(2);
    expect(follows.strainMax).toBeCloseTo((6 * 2e-5) / 2, 6);
  });

  it('gives the largest 95 % half-width of its marks', () => {
    const { panel } = fitPanel(alcoveOf({}), covarianceOf(1e-6), jobOf(), 'left');
    const sds = Object.values(panel.edges).flatMap(({ marks }) => marks.map(({ sd }) => sd));
    expect(panel.worst95).toBeCloseTo(1.959964 * Math.max(...sds), 12);
    expect(panel.worst95).toBeGreaterThan(0);
  });

  it('reports holes with the panel they are in', () => {
    const { problems } = fitted(alcoveOf({}), 'right', {
      fixtures: [{ id: 'valve', kind: 'valve', wall: 'right', aboveRim: 20, fromBack: 380, hole: 95 }],
    });
    expect(problems).toEqual([
      {
        where: 'panels.right.holes.valve',
        what: "the hole breaks through the panel's edge; check where the fixture is",
        howMuch: expect.closeTo(47.5 - 17, 9),
      },
    ]);
  });
});
