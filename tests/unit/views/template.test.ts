import { describe, expect, it } from 'vitest';
import { panelDrawing, shapeBounds } from '../../../src/output';
import { apart, compactShapes } from '../../../src/views/bench/compact-shapes';
import { fitTemplate } from '../../../src/views/bench/fit-template';
import { panelSketch } from '../../../src/views/bench/sketch';
import { solvedDemo } from '../scene/solvedDemo';

const { job, result } = solvedDemo();
const drawing = panelDrawing(result.panels.right, job, result.problems);

describe('apart', () => {
  it('keeps places that are far enough apart and spreads those that are not', () => {
    expect(apart([0, 10, 20], 5, 100)).toEqual([0, 10, 20]);
    expect(apart([0, 1, 2], 5, 100)).toEqual([0, 5, 10]);
  });

  it('stays below the most', () => {
    expect(apart([90, 98, 99], 5, 100)).toEqual([90, 95, 100]);
  });
});

describe('compactShapes', () => {
  it('numbers every mark, with its side of the control line on upright edges, and names every hole', () => {
    const words = compactShapes(drawing, 20).flatMap((shape) => (shape.kind === 'words' ? [shape.text] : []));
    const numbers = drawing.edges.flatMap((edge) =>
      edge.marks.map(({ number, direction }) =>
        edge.place === 'left' || edge.place === 'right' ? `${number} ${direction}` : `${number}`,
      ),
    );
    expect(words).toEqual(expect.arrayContaining([...numbers, ...drawing.holes.map((hole) => hole.id)]));
  });
});

it('keeps the names of holes near each other off each other, and on the sheet', () => {
  const hole = drawing.holes[0]!;
  const { left, right } = drawing.bounds;
  const near = ['grab bar, left end', 'grab bar, right end', 'valve'].map((id, i) => ({
    ...hole,
    id,
    centre: [right - 40 - 30 * i, hole.centre[1]] as [number, number],
  }));
  const names = compactShapes({ ...drawing, holes: near }, 20).filter(
    (shape) => shape.kind === 'words' && near.some(({ id }) => id === shape.text),
  );
  const boxes = names.map((name) => shapeBounds([name]));
  expect(boxes).toHaveLength(3);
  for (const [i, a] of boxes.entries()) {
    expect(a.left).toBeGreaterThanOrEqual(left - 1e-6);
    expect(a.right).toBeLessThanOrEqual(right + 1e-6);
    for (const b of boxes.slice(i + 1)) {
      expect(a.left < b.right && b.left < a.right && a.bottom < b.top && b.bottom < a.top).toBe(false);
    }
  }
});

describe('fitTemplate', () => {
  it.each([
    { width: 340, height: 640 },
    { width: 800, height: 700 },
    { width: 1000, height: 1200 },
  ])('fills %o and no more', (room) => {
    const { width, height, size, shapes } = fitTemplate(panelSketch(drawing), room, 1);
    expect(width).toBeLessThanOrEqual(room.width + 1);
    expect(height).toBeLessThanOrEqual(room.height + 1);
    const { left, right } = shapeBounds(shapes);
    expect(((right - left + 2 * size) / width) * 13).toBeCloseTo(size, 6);
  });

  it('grows when looked at closer', () => {
    const room = { width: 800, height: 700 };
    expect(fitTemplate(panelSketch(drawing), room, 2).height).toBeGreaterThan(
      1.5 * fitTemplate(panelSketch(drawing), room, 1).height,
    );
  });
});
