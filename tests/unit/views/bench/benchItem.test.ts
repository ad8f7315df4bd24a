import { expect, it } from 'vitest';
import { pieceDrawing, shapeBounds } from '../../../../src/output';
import { benchItem } from '../../../../src/views/bench/bench-item';
import { fitTemplate } from '../../../../src/views/bench/fit-template';
import { pieceSketch } from '../../../../src/views/bench/sketch';
import { solvedDemo } from '../../scene/solvedDemo';

const { job, result } = solvedDemo();

it.each([
  ['left', 'panels', 'left', null],
  ['trim.left.vertical', 'trim', null, 'trim.left.vertical'],
  ['trim', 'trim', null, 'trim.top'],
  ['shelves.gone', 'shelves', null, 'shelves.low'],
  ['sheets', 'sheets', null, null],
  ['ways.left', 'ways', 'left', null],
  ['ways', 'ways', 'back', null],
  ['beds.right', 'beds', 'right', null],
])('shows for %s', (item, group, panel, piece) => {
  const shown = benchItem(item, result);
  expect([shown.group, shown.panel, shown.piece?.id ?? null]).toEqual([group, panel, piece]);
});

it('has no piece where the job has none', () => {
  expect(benchItem('trim.top', { pieces: { trim: [], legs: [], fillers: [], shelves: [] } })).toEqual({
    group: 'trim',
    panel: null,
    piece: null,
    siblings: [],
  });
});

it.each(Object.values(result.pieces).flat())('fits the template of $id into its room, every mark numbered', (piece) => {
  const drawing = pieceDrawing(piece, job);
  for (const room of [
    { width: 340, height: 640 },
    { width: 880, height: 700 },
  ]) {
    const { width, shapes } = fitTemplate(pieceSketch(drawing), room, 1);
    expect(width).toBeLessThanOrEqual(room.width + 1);
    const texts = shapes.flatMap((shape) => (shape.kind === 'words' ? [shape.text] : []));
    const numbers = drawing.edges.flatMap(({ marks }) => marks.map(({ number }) => number));
    for (const number of numbers) expect(texts.some((text) => new RegExp(`^${number}(:|$)`).test(text))).toBe(true);
    const { left, right } = shapeBounds(shapes);
    expect(right).toBeGreaterThan(left);
  }
});
