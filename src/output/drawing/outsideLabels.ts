import type { Point } from '../../core';
import type { Place } from './drawing';
import { LABEL_LINES } from './labelLines';
import type { Rectangle } from './rectangle';
import { type Shape, words } from './shape';
import { spread } from './spread';
import type { MeasureText } from './textWidth';

/** Line spacing over font size. */
const LEADING = 1.25;
/** Clear ground between the drawing and its labels, over font size. */
const MARGIN = 2.5;
const BLOCK = LABEL_LINES * LEADING;

/** A block of words, at most `LABEL_LINES`, with a leader to the point it tells of. */
export interface Label {
  at: Point;
  lines: string[];
}

/** What labels stand outside of, and the labels on each of its sides. */
export interface Labelled {
  bounds: Rectangle;
  labels: Record<Place, Label[]>;
}

/**
 * Labels outside a drawing's bounds, none over another, each with a leader.
 * @param rowWidth width in mm that the rows above and below may take if that is more than the drawing takes with its
 * columns
 */
export function outsideLabels(labelled: Labelled, size: number, measure: MeasureText, rowWidth = 0): Shape[] {
  return [
    ...(['left', 'right'] as const).flatMap((place) => columnLabels(labelled, place, size)),
    ...(['bottom', 'top'] as const).flatMap((place) => rowLabels(labelled, place, size, measure, rowWidth)),
  ];
}

/** Room in mm along a column that each of its labels takes. */
export const labelPitch = (size: number): number => (BLOCK + 0.5) * size;

/** Room in mm that the labels on one side take outside the drawing's bounds. */
export function labelRoom(labelled: Labelled, place: Place, size: number, measure: MeasureText): number {
  const labels = labelled.labels[place];
  return labels.length === 0 ? size : (MARGIN + 0.5) * size + widest(labels, size, measure);
}

function columnLabels(labelled: Labelled, place: 'left' | 'right', size: number): Shape[] {
  const labels = labelled.labels[place];
  const { bounds } = labelled;
  const outward = place === 'left' ? -1 : 1;
  const x = bounds[place] + outward * MARGIN * size;
  const centres = spread(
    labels.map(({ at }) => at[1]),
    labelPitch(size),
    [bounds.bottom, bounds.top + size],
  );
  return labels.flatMap(({ at, lines }, i) => [
    leader(at, [x - outward * 0.5 * size, centres[i]!]),
    ...stack(lines, x, centres[i]! + (BLOCK * size) / 2, size, outward < 0 ? 'end' : 'start'),
  ]);
}

/** In one row or two, the leaders to the farther one passing between the labels of the nearer; else turned upright. */
function rowLabels(
  labelled: Labelled,
  place: 'bottom' | 'top',
  size: number,
  measure: MeasureText,
  rowWidth: number,
): Shape[] {
  const labels = labelled.labels[place];
  if (labels.length === 0) return [];
  const { bounds } = labelled;
  const outward = place === 'bottom' ? -1 : 1;
  const near = bounds[place] + outward * MARGIN * size;
  const [leftmost, rightmost] = [
    bounds.left - labelRoom(labelled, 'left', size, measure),
    bounds.right + labelRoom(labelled, 'right', size, measure),
  ];
  const spare = Math.max(0, rowWidth - (rightmost - leftmost)) / 2;
  const [left, right] = [leftmost - spare, rightmost + spare];
  const pitch = widest(labels, size, measure) + 1.5 * size;
  const rows = Math.ceil((labels.length * pitch) / (right - left));
  const wanted = labels.map(({ at }) => at[0]);
  const head: number = near - outward * 0.5 * size;
  if (rows > 2) {
    const centres = spread(wanted, (BLOCK + 0.5) * size, [left, right]);
    return labels.flatMap(({ at, lines }, i) => [
      leader(at, [centres[i]!, head]),
      ...turnedStack(lines, centres[i]!, near, size, outward),
    ]);
  }
  const inset = (pitch - pitch / rows) / 2;
  const centres = spread(wanted, pitch / rows, [left + inset, right - inset]);
  return labels.flatMap(({ at, lines }, i) => {
    const y = near + outward * (i % rows) * (BLOCK + 0.6) * size;
    return [
      leader(at, [centres[i]!, head], [centres[i]!, y - outward * 0.2 * size]),
      ...stack(lines, centres[i]!, outward < 0 ? y : y + BLOCK * size, size, 'middle'),
    ];
  });
}

const leader = (...points: Point[]): Shape => ({ kind: 'polyline', layer: 'text', points, closed: false });

/** Lines one under another from `top` down, the first one bold. */
function stack(lines: string[], x: number, top: number, size: number, anchor: 'start' | 'middle' | 'end'): Shape[] {
  return lines.map((text, row) =>
    words(text, [x, top - (row + 0.8) * LEADING * size], size, { anchor, bold: row === 0 }),
  );
}

/** Lines that read upwards, side by side about `x`. */
function turnedStack(lines: string[], x: number, y: number, size: number, outward: number): Shape[] {
  return lines.map((text, row) =>
    words(text, [x - (BLOCK / 2 - (row + 0.8) * LEADING) * size, y], size, {
      anchor: outward < 0 ? 'end' : 'start',
      angle: 90,
      bold: row === 0,
    }),
  );
}

function widest(labels: Label[], size: number, measure: MeasureText): number {
  return Math.max(...labels.flatMap(({ lines }) => lines.map((text, row) => measure(text, size, row === 0))));
}
