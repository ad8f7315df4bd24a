import type { Point } from '../../core';
import type { PanelDrawing } from './drawing';
import { markTick } from './markTick';
import { corners } from './rectangle';
import { circle, line, polygon, type Shape } from './shape';

/**
 * Lines of a template without any words.
 * @param tick length in mm of the stroke across an edge at a mark
 */
export function geometryShapes(drawing: PanelDrawing, tick: number): Shape[] {
  return [...sheetShapes(drawing), ...panelShapes(drawing, tick)];
}

/** The whole sheet and the strips to cut off or missing. */
export function sheetShapes({ sheet, strips }: PanelDrawing): Shape[] {
  return [
    polygon('sheet', corners(sheet)),
    ...strips.flatMap(({ kind, polygon: points }) => (kind === 'offcut' ? [] : [polygon(kind, points)])),
  ];
}

/** Control lines, outline, holes and marks. */
export function panelShapes(
  { levelLine, plumbDatum, outline, holes, edges, grain }: PanelDrawing,
  tick: number,
): Shape[] {
  return [
    line('datum', ...levelLine.line),
    line('datum', ...plumbDatum.line),
    polygon('cut', outline),
    ...(grain ? arrowShapes(grain.arrow, tick) : []),
    ...holes.flatMap(({ centre, diameter }) => [
      circle('hole', centre, diameter.mm / 2),
      ...cross(centre, diameter.mm / 2 + tick / 2),
    ]),
    ...edges.flatMap(({ marks, place }) => marks.map(({ at }) => markTick(place, at, tick, 0.7))),
  ];
}

/** A shaft with a head of the tick's length. */
function arrowShapes([from, to]: [Point, Point], tick: number): Shape[] {
  const length = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [dx, dy] = [((to[0] - from[0]) / length) * tick, ((to[1] - from[1]) / length) * tick];
  const barb = (side: 1 | -1): Point => [to[0] - dx - (side * dy) / 2, to[1] - dy + (side * dx) / 2];
  return [line('text', from, to), line('text', to, barb(1)), line('text', to, barb(-1))];
}

const cross = ([x, y]: Point, reach: number): Shape[] => [
  line('mark', [x - reach, y], [x + reach, y]),
  line('mark', [x, y - reach], [x, y + reach]),
];
