import { describe, expect, it } from 'vitest';
import { flatArea, flatUv } from '../../../../../src/scene/client/geometry';
import { alcoveShape, onWall, panelSolid } from '../../../../../src/scene/geometry';
import { solvedDemo } from '../../solvedDemo';

const { job, result } = solvedDemo();
const shape = alcoveShape(result);
const panels = Object.values(result.panels);

describe('flatUv', () => {
  it.each(panels.map((panel) => [panel.name, panel] as const))(
    'puts the outline of the %s panel where it lies on the sheet, to half a millimetre',
    (name, panel) => {
      const on = onWall(shape, name, 0);
      const { left, bottom, width, height } = flatArea(panel);
      const uv = flatUv(
        name,
        panel,
        panel.outline.flatMap(([u, v]) => [...on(u, v)]),
      );
      panel.flat.outline.forEach(([x, y], i) => {
        expect(uv[2 * i]! * width + left).toBeCloseTo(x - panel.flat.sheet.left, 0);
        expect(uv[2 * i + 1]! * height + bottom).toBeCloseTo(y - panel.flat.sheet.bottom, 0);
      });
    },
  );

  it('keeps one scale over a panel: a figure is as large here as there', () => {
    for (const panel of panels) {
      const { width, height } = flatArea(panel);
      const { positions } = panelSolid(shape, panel, job.fit.bed, (point) => point).mesh;
      const uv = flatUv(panel.name, panel, positions);
      const along = (i: number) => positions[3 * i + (panel.name === 'back' ? 0 : 2)]!;
      for (let i = 1; i < Math.min(200, uv.length / 2); i++) {
        const flat = Math.hypot((uv[2 * i]! - uv[0]!) * width, (uv[2 * i + 1]! - uv[1]!) * height);
        const there = Math.hypot(along(i) - along(0), positions[3 * i + 1]! - positions[1]!);
        expect(Math.abs(flat - there)).toBeLessThan(0.6);
      }
    }
  });

  it('stays within the picture on the face of the panel', () => {
    for (const panel of panels) {
      const { positions } = panelSolid(shape, panel, job.fit.bed, (point) => point).mesh;
      for (const value of flatUv(panel.name, panel, positions)) {
        expect(value).toBeGreaterThan(-0.02);
        expect(value).toBeLessThan(1.02);
      }
    }
  });
});
