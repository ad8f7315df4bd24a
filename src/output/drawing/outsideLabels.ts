import type { Point } from '../../core';
import type { HoleDrawing, PanelDrawing, Place } from './drawing';
import { holeLines, LABEL_LINES, markLines } from './labelLines';
import { type Shape, words } from './shape';
import { spread } from './spread';
import type { MeasureText } from './textWidth';

/** Line spacing over font size. */
const LEADING = 1.25;
/** Clear ground between the drawing and its labels, over font size. */
const MARGIN = 2.5;
const BLOCK = LABEL_LINES * LEADING;

/** A block of words with a leader to the point it tells of. */
interface Label {
  at: Point;
  lines: string[];
}

/**
 * Labels of all marks and holes outside the drawing's bounds, none over another, each with a leader.
 * @param rowWidth width in mm that the rows above and below may take if that is more than the drawing takes with its
 * columns
 */
export function outsideLabels(drawing: PanelDrawing, size: number, measure: MeasureText, rowWidth = 0): Shape[] {
  return [
    ...(['left', 'right'] as const).flatMap((place) => columnLabels(drawing, place, size)),
    ...(['bottom', 'top'] as const).flatMap((place) => rowLabels(drawing, place, size, measure, rowWidth)),
  ];
}

/** Room in mm that the labels on one side take outside the drawing's bounds. */
export function labelRoom(drawing: PanelDrawing, place: Place, size: number, measure: MeasureText): number {
  const labels = labelsAt(drawing, place);
  return labels.length === 0 ? size : (MARGIN + 0.5) * size + widest(labels, size, measure);
}

function labelsAt({ edges, holes, outline }: PanelDrawing, place: Place): Label[] {
  const marks = edges.filter((edge) => edge.place === place).flatMap((edge) => edge.marks);
  const labels = marks.map((mark) => ({ at: mark.at, lines: markLines(mark) }));
  if (place === 'bottom' || place === 'top') return labels;
  const xs = outline.map(([x]) => x);
  const middle = (Math.min(...xs) + Math.max(...xs)) / 2;
  const nearMiddle = 0.1 * (Math.max(...xs) - Math.min(...xs));
  const besides = ({ centre: [x] }: HoleDrawing) => (x < middle - nearMiddle ? 'left' : 'right');
  const rim = ({ centre: [x, y], diameter }: HoleDrawing): Point => [
    x + ((place === 'left' ? -1 : 1) * diameter.mm) / 2,
    y,
  ];
  return [
    ...labels,
    ...holes.filter((hole) => besides(hole) === place).map((hole) => ({ at: rim(hole), lines: holeLines(hole) })),
  ];
}

function columnLabels(drawing: PanelDrawing, place: 'left' | 'right', size: number): Shape[] {
  const labels = labelsAt(drawing, place);
  const { bounds } = drawing;
  const outward = place === 'left' ? -1 : 1;
  const x = bounds[place] + outward * MARGIN * size;
  const centres = spread(
    labels.map(({ at }) => at[1]),
    (BLOCK + 0.5) * size,
    [bounds.bottom, bounds.top + size],
  );
  return labels.flatMap(({ at, lines }, i) => [
    leader(at, [x - outward * 0.5 * size, centres[i]!]),
    ...stack(lines, x, centres[i]! + (BLOCK * size) / 2, size, outward < 0 ? 'end' : 'start'),
  ]);
}

/** In one row or two, the leaders to the farther one passing between the labels of the nearer; else turned upright. */
function rowLabels(
  drawing: PanelDrawing,
  place: 'bottom' | 'top',
  size: number,
  measure: MeasureText,
  rowWidth: number,
): Shape[] {
  const labels = labelsAt(drawing, place);
  if (labels.length === 0) return [];
  const { bounds } = drawing;
  const outward = place === 'bottom' ? -1 : 1;
  const near = bounds[place] + outward * MARGIN * size;
  const [leftmost, rightmost] = [
    bounds.left - labelRoom(drawing, 'left', size, measure),
    bounds.right + labelRoom(drawing, 'right', size, measure),
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
