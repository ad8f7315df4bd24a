import type { Point } from '../../core';
import {
  clipStroke,
  grown,
  holds,
  holeLines,
  line,
  type MeasureText,
  markLines,
  type PanelDrawing,
  type Place,
  type Polyline,
  type Rectangle,
  type Shape,
  shapeBounds,
  words,
} from '../drawing';
import { POINT } from './paper';
import { placeLabel } from './placeLabel';
import { strokesOf, templateStrokes } from './templateStrokes';

const SIZE = 9 * POINT;
const LEADING = 1.25;
/** Clear border inside a tile, mm. */
const INSET = 2;

/** From a side of a drawing into it. */
export const INWARDS: Record<Place, Point> = { left: [1, 0], right: [-1, 0], bottom: [0, 1], top: [0, -1] };

export interface TileLabel {
  lines: string[];
  upright: boolean;
  anchor: Point;
  reach: number;
  toward: Point;
}

/** Words of one full-size tile, each whole on it and clear of lines and of one another where there is room. */
export function tileLabels(drawing: PanelDrawing, ground: Rectangle, measure: MeasureText): Shape[] {
  const areas = drawing.strips
    .filter(({ kind }) => kind !== 'offcut')
    .map(({ polygon }) => shapeBounds([{ kind: 'polyline', layer: 'sliver', points: polygon, closed: true }]));
  return placeLabels(labelsOn(drawing, ground), ground, { strokes: templateStrokes(drawing), areas }, measure);
}

/** Each label whole on the ground and clear of lines, areas and one another where there is room. */
export function placeLabels(
  labels: readonly TileLabel[],
  ground: Rectangle,
  avoid: { strokes: [Point, Point][]; areas: Rectangle[] },
  measure: MeasureText,
): Shape[] {
  const inside = grown(ground, -INSET);
  const strokes = avoid.strokes.flatMap(([a, b]) => {
    const part = clipStroke(a, b, ground);
    return part ? [part] : [];
  });
  const { areas } = avoid;
  const taken: Rectangle[] = [];
  return labels.flatMap(({ lines, upright, ...wish }) => {
    const long = Math.max(...lines.map((text, i) => measure(text, SIZE, i === 0)));
    const high = lines.length * LEADING * SIZE;
    const box = placeLabel(
      { ...wish, size: SIZE, width: upright ? high : long, height: upright ? long : high },
      { inside, strokes, areas, taken },
    );
    const leader = leaderTo(wish, box);
    taken.push(box);
    strokes.push(...leader.map(({ points }): [Point, Point] => [points[0]!, points[1]!]));
    return [
      ...leader,
      ...lines.map((text, row) =>
        upright
          ? words(text, [box.left + (row + 0.8) * LEADING * SIZE, box.bottom], SIZE, { angle: 90, bold: row === 0 })
          : words(text, [box.left, box.top - (row + 0.8) * LEADING * SIZE], SIZE, { bold: row === 0 }),
      ),
    ];
  });
}

/** A line from the point told of to words that lie too far off to be taken for its own without one. */
function leaderTo({ anchor: [x, y], reach }: Pick<TileLabel, 'anchor' | 'reach'>, box: Rectangle): Polyline[] {
  const near: Point = [Math.max(box.left, Math.min(box.right, x)), Math.max(box.bottom, Math.min(box.top, y))];
  return Math.hypot(near[0] - x, near[1] - y) > reach + SIZE ? [line('text', [x, y], near)] : [];
}

function labelsOn(drawing: PanelDrawing, ground: Rectangle): TileLabel[] {
  const labels: TileLabel[] = [];
  for (const edge of drawing.edges) {
    for (const mark of edge.marks) {
      if (holds(ground, mark.at))
        labels.push({ lines: markLines(mark), upright: false, anchor: mark.at, reach: 5, toward: INWARDS[edge.place] });
    }
  }
  for (const hole of drawing.holes) {
    if (holds(ground, hole.centre)) {
      labels.push({
        lines: holeLines(hole),
        upright: false,
        anchor: hole.centre,
        reach: hole.diameter.mm / 2 + 7,
        toward: [1, 0],
      });
    }
  }
  for (const edge of drawing.edges) {
    const middle = middleOn(edge.path, ground);
    const upright = edge.place === 'left' || edge.place === 'right';
    if (middle)
      labels.push({
        lines: [`${edge.title.toUpperCase()}: ${edge.methodWords}`],
        upright,
        anchor: middle,
        reach: 3,
        toward: INWARDS[edge.place],
      });
  }
  for (const [control, upright] of [
    [drawing.levelLine, false],
    [drawing.plumbDatum, true],
  ] as const) {
    const middle = middleOn(control.line, ground);
    if (middle)
      labels.push({ lines: [control.label], upright, anchor: middle, reach: 1.5, toward: upright ? [1, 0] : [0, 1] });
  }
  return labels;
}

/** The middle of what a tile shows of a path. */
export function middleOn(path: Point[], ground: Rectangle): Point | null {
  const parts = strokesOf(path).flatMap(([a, b]) => clipStroke(a, b, ground) ?? []);
  return parts.length ? [(parts[0]![0] + parts.at(-1)![0]) / 2, (parts[0]![1] + parts.at(-1)![1]) / 2] : null;
}
