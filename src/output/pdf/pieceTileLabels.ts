import type { Point } from '../../core';
import type { MeasureText, PieceDrawing, Place, Rectangle, Shape } from '../drawing';
import { strokesOf } from './templateStrokes';
import { middleOn, placeLabels, type TileLabel } from './tileLabels';

const inward: Record<Place, Point> = { left: [1, 0], right: [-1, 0], bottom: [0, 1], top: [0, -1] };

/** Words of one full-size tile of a piece. */
export function pieceTileLabels(drawing: PieceDrawing, ground: Rectangle, measure: MeasureText): Shape[] {
  const { edges, notches, tapes, brackets, outline, back } = drawing;
  const within = ([x, y]: Point) => x >= ground.left && x <= ground.right && y >= ground.bottom && y <= ground.top;
  const labels: TileLabel[] = edges.flatMap(({ marks, place }) =>
    marks.flatMap(({ at, lines }) =>
      within(at) ? [{ lines, upright: false, anchor: at, reach: 4, toward: inward[place] }] : [],
    ),
  );
  for (const { title, methodWords, angles, path, place } of edges) {
    const middle = middleOn(path, ground);
    const lines = [`${title.toUpperCase()}: ${methodWords}`, ...angles];
    if (middle) labels.push({ lines, upright: false, anchor: middle, reach: 4, toward: inward[place] });
  }
  for (const { at, lines, place } of [...notches, ...brackets, ...tapes]) {
    if (within(at)) labels.push({ lines, upright: false, anchor: at, reach: 4, toward: inward[place] });
  }
  const loops = [outline, ...(back ? [back] : [])];
  const strokes = loops.flatMap((loop) => strokesOf([...loop, loop[0]!]));
  return placeLabels(labels, ground, { strokes, areas: [] }, measure);
}
