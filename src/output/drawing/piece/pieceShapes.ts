import type { Point } from '../../../core';
import { breakLine } from '../croppedSheet';
import type { Place } from '../drawing';
import { LABEL_LINES } from '../labelLines';
import { markTick } from '../markTick';
import { noteShapes } from '../noteShapes';
import { type Label, type Labelled, labelPitch, labelRoom, outsideLabels } from '../outsideLabels';
import { line, polygon, type Shape } from '../shape';
import { type MeasureText, roughTextWidth } from '../textWidth';
import type { PieceDrawing, PieceEdgeDrawing } from './drawing';

export interface PieceShapesOptions {
  /** font size in mm at the drawing's scale */
  size: number;
  measure?: MeasureText;
  /** title and sentences under the drawing */
  notes: boolean;
  /** width in mm that rows of labels may take beyond the drawing's own */
  rowWidth?: number;
}

/** A whole piece template: lines, what is told at every mark, end and edge, and the notes if wanted. */
export function pieceShapes(
  drawing: PieceDrawing,
  { size, notes, measure = roughTextWidth, rowWidth = 0 }: PieceShapesOptions,
): Shape[] {
  const labelled = pieceLabels(drawing, size);
  const shapes = [...pieceGeometry(drawing, 1.2 * size), ...outsideLabels(labelled, size, measure, rowWidth)];
  if (!notes) return shapes;
  const left = labelled.bounds.left - labelRoom(labelled, 'left', size, measure);
  const right = labelled.bounds.right + labelRoom(labelled, 'right', size, measure);
  const wide = Math.max(right - left, 40 * size);
  return [...shapes, ...noteShapes(toldOf(drawing), [left, left + wide], shapes, size, measure)];
}

/**
 * Lines of a piece's template without any words.
 * @param tick length in mm of the stroke across an edge at a mark
 */
export function pieceGeometry(drawing: PieceDrawing, tick: number): Shape[] {
  const { outline, back, lips, edges, tapes, brackets, breaks } = drawing;
  return [
    ...lips.map((loop) => polygon('lip', loop)),
    ...(back ? [polygon('back', back)] : []),
    ...tapes.flatMap((tape) => (tape.line ? [line('tape', ...tape.line)] : [])),
    ...brackets.flatMap((bracket) => (bracket.line ? [line('datum', ...bracket.line)] : [])),
    polygon('cut', outline),
    ...breaks.map(
      ([from, to]): Shape => ({
        kind: 'polyline',
        layer: 'sheet',
        points: breakLine(from, to, 0.8 * tick),
        closed: false,
      }),
    ),
    ...edges.flatMap(({ marks, place }) => marks.map(({ at }) => markTick(place, at, tick, 0.5))),
  ];
}

/** Sentences under a piece's template. */
export function pieceTemplateNotes(drawing: PieceDrawing): string[] {
  const { wallWords, sizeWords, edges, notes } = drawing;
  const leaves = edges.flatMap(({ title, leave }) => (leave ? [`* ${title}: ${leave}.`] : []));
  return [
    `${wallWords} ${sizeWords}.`,
    'Measured from its own left and lower ends as drawn; ± holds in 95 of 100 cases.',
    ...(drawing.back ? ['Dashed: the cut at the back, where it slants through the thickness.'] : []),
    ...leaves,
    ...notes,
  ];
}

const toldOf = (drawing: PieceDrawing) => ({
  title: drawing.title,
  statement: drawing.statement,
  notes: pieceTemplateNotes(drawing),
});

/** Labels on the sides nearest to what they tell of; the room round the piece grows to hold its columns. */
function pieceLabels({ edges, notches, tapes, brackets, bounds }: PieceDrawing, size: number): Labelled {
  const labels: Labelled['labels'] = { left: [], right: [], bottom: [], top: [] };
  const put = (place: Place, { at, lines }: Label): void => {
    labels[sideFor(place, at, bounds)].push({ at, lines: lines.slice(0, LABEL_LINES) });
  };
  for (const edge of edges) for (const label of edgeLabels(edge)) put(edge.place, label);
  for (const feature of [...notches, ...tapes, ...brackets]) put(feature.place, feature);
  for (const side of ['left', 'right'] as const) labels[side].sort((a, b) => a.at[1] - b.at[1]);
  for (const side of ['bottom', 'top'] as const) labels[side].sort((a, b) => a.at[0] - b.at[0]);
  const high = Math.max(labels.left.length, labels.right.length) * labelPitch(size);
  const lacking = Math.max(0, high - (bounds.top - bounds.bottom) - size) / 2;
  return { bounds: { ...bounds, bottom: bounds.bottom - lacking, top: bounds.top + lacking }, labels };
}

/** The wanted side, or left or right where a point of a narrow piece lies far from its foot or head. */
function sideFor(place: Place, [x, y]: Point, { left, right, bottom, top }: PieceDrawing['bounds']): Place {
  const far = place === 'bottom' ? y - bottom : place === 'top' ? top - y : 0;
  if (far <= (right - left) / 2) return place;
  return x - left < right - x ? 'left' : 'right';
}

/** The edge's own label at its middle, among those of its marks. */
function edgeLabels({ title, methodWords, angles, path, marks }: PieceEdgeDrawing): Label[] {
  const told = marks.map(({ at, lines }): Label => ({ at, lines }));
  const half = Math.ceil(told.length / 2);
  const own: Label = { at: middleOf(path), lines: [`${title.toUpperCase()}: ${methodWords}`, ...angles] };
  return [...told.slice(0, half), own, ...told.slice(half)];
}

/** The middle of a path's longest straight stretch. */
function middleOf(path: readonly Point[]): Point {
  let [middle, longest] = [path[0]!, -1];
  path.slice(1).forEach((to, i) => {
    const from = path[i]!;
    const long = Math.hypot(to[0] - from[0], to[1] - from[1]);
    // the middle one of stretches as long as each other, as along a curve
    if (long > longest * 1.05 || (long > longest / 1.05 && i <= path.length / 2)) {
      longest = Math.max(long, longest);
      middle = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
    }
  });
  return middle;
}
