import { holds, type MeasureText, type PieceDrawing, type Rectangle, type Shape } from '../drawing';
import { strokesOf } from './templateStrokes';
import { INWARDS, middleOn, placeLabels, type TileLabel } from './tileLabels';

/** Words of one full-size tile of a piece. */
export function pieceTileLabels(drawing: PieceDrawing, ground: Rectangle, measure: MeasureText): Shape[] {
  const { edges, notches, tapes, brackets, outline, back } = drawing;
  const labels: TileLabel[] = edges.flatMap(({ marks, place }) =>
    marks.flatMap(({ at, lines }) =>
      holds(ground, at) ? [{ lines, upright: false, anchor: at, reach: 4, toward: INWARDS[place] }] : [],
    ),
  );
  for (const { title, methodWords, angles, path, place } of edges) {
    const middle = middleOn(path, ground);
    const lines = [`${title.toUpperCase()}: ${methodWords}`, ...angles];
    if (middle) labels.push({ lines, upright: false, anchor: middle, reach: 4, toward: INWARDS[place] });
  }
  for (const { at, lines, place } of [...notches, ...brackets, ...tapes]) {
    if (holds(ground, at)) labels.push({ lines, upright: false, anchor: at, reach: 4, toward: INWARDS[place] });
  }
  const loops = [outline, ...(back ? [back] : [])];
  const strokes = loops.flatMap((loop) => strokesOf([...loop, loop[0]!]));
  return placeLabels(labels, ground, { strokes, areas: [] }, measure);
}
