import { describe, expect, it } from 'vitest';
import { panelDrawing, type Rectangle, shapeBounds, templateShapes, type Words } from '../../../../src/output/drawing';
import { fixtureJob, fixtureResult } from '../fixture';

const overlap = (a: Rectangle, b: Rectangle) =>
  a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top;

describe('templateShapes', () => {
  const job = fixtureJob();
  const { panels } = fixtureResult();

  it('never prints two lines of words over one another', () => {
    for (const panel of Object.values(panels)) {
      for (const size of [8, 16, 30]) {
        const shapes = templateShapes(panelDrawing(panel, job), { size, notes: true });
        const texts = shapes.filter((shape): shape is Words => shape.kind === 'words');
        const boxes = texts.map((text) => shapeBounds([text]));
        boxes.forEach((box, i) => {
          boxes.slice(i + 1).forEach((other, j) => {
            const shrunk = {
              left: box.left + 0.1 * size,
              right: box.right - 0.1 * size,
              bottom: box.bottom + 0.3 * size,
              top: box.top - 0.1 * size,
            };
            expect(overlap(shrunk, other) ? [texts[i]!.text, texts[i + j + 1]!.text] : null).toBeNull();
          });
        });
      }
    }
  });

  it('tells every mark and every hole', () => {
    const drawing = panelDrawing(panels.right, job);
    const texts = templateShapes(drawing, { size: 16, notes: false }).flatMap((shape) =>
      shape.kind === 'words' ? [shape.text] : [],
    );
    for (const { marks } of drawing.edges) {
      for (const mark of marks) {
        const at = texts.findIndex((text) => text.startsWith(`${mark.number}:  ${mark.across.text}`));
        expect(texts.slice(at + 1, at + 3)).toEqual([mark.alongWords, mark.sliverWords]);
      }
    }
    for (const hole of drawing.holes) expect(texts).toContain(`${hole.id}: Ø ${hole.diameter.text}`);
  });

  it('keeps a cropped sheet within reach of the panel', () => {
    const drawing = panelDrawing(panels.right, job);
    const sheet = (cropped: boolean) =>
      shapeBounds(
        templateShapes(drawing, { size: 16, notes: false, cropped }).filter(({ layer }) => layer === 'sheet'),
      );
    expect(sheet(false).bottom).toBeCloseTo(drawing.sheet.bottom, 9);
    const lowest = Math.min(...drawing.outline.map(([, y]) => y));
    expect(sheet(true).bottom).toBeGreaterThan(lowest - 80);
    expect(sheet(true).left).toBeCloseTo(drawing.sheet.left, 9);
  });
});
