import { croppedSheet } from './croppedSheet';
import type { PanelDrawing } from './drawing';
import { panelShapes, sheetShapes } from './geometryShapes';
import { insideLabels } from './insideLabels';
import { noteShapes } from './noteShapes';
import { templateNotes } from './notes';
import { labelRoom, outsideLabels } from './outsideLabels';
import { panelLabels } from './panelLabels';
import type { Shape } from './shape';
import { type MeasureText, roughTextWidth } from './textWidth';

export interface TemplateOptions {
  /** font size in mm at the drawing's scale */
  size: number;
  measure?: MeasureText;
  /** title and sentences under the drawing */
  notes: boolean;
  /** leaves out what of the sheet lies far from the panel */
  cropped?: boolean;
  /** width in mm that rows of labels may take beyond the drawing's own */
  rowWidth?: number;
  /** font size in mm below which edge names do not shrink to fit */
  smallest?: number;
}

/** A whole template: lines, dimensions at every mark and hole, edge names, and the notes if wanted. */
export function templateShapes(
  drawing: PanelDrawing,
  { size, notes, rowWidth, smallest, cropped = false, measure = roughTextWidth }: TemplateOptions,
): Shape[] {
  const tick = 1.6 * size;
  const labelled = panelLabels(drawing);
  const shapes: Shape[] = [
    ...(cropped ? croppedSheet(drawing, 0.8 * size) : sheetShapes(drawing)),
    ...panelShapes(drawing, tick),
    ...insideLabels(drawing, { largest: 0.9 * size, smallest: smallest ?? 0.5 * size, tick, measure }),
    ...outsideLabels(labelled, size, measure, rowWidth),
  ];
  if (!notes) return shapes;
  const left = drawing.bounds.left - labelRoom(labelled, 'left', size, measure);
  const right = drawing.bounds.right + labelRoom(labelled, 'right', size, measure);
  const { title, statement } = drawing;
  const told = { title, statement, notes: templateNotes(drawing) };
  return [...shapes, ...noteShapes(told, [left, right], shapes, size, measure)];
}
