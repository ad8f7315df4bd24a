import { croppedSheet } from './croppedSheet';
import type { PanelDrawing } from './drawing';
import { panelShapes, sheetShapes } from './geometryShapes';
import { insideLabels } from './insideLabels';
import { templateNotes } from './notes';
import { labelRoom, outsideLabels } from './outsideLabels';
import { type Shape, words } from './shape';
import { shapeBounds } from './shapeBounds';
import { type MeasureText, roughTextWidth, wrapText } from './textWidth';

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
  const shapes: Shape[] = [
    ...(cropped ? croppedSheet(drawing, 0.8 * size) : sheetShapes(drawing)),
    ...panelShapes(drawing, tick),
    ...insideLabels(drawing, { largest: 0.9 * size, smallest: smallest ?? 0.5 * size, tick, measure }),
    ...outsideLabels(drawing, size, measure, rowWidth),
  ];
  return notes ? [...shapes, ...noteShapes(drawing, shapes, size, measure)] : shapes;
}

function noteShapes(drawing: PanelDrawing, shapes: Shape[], size: number, measure: MeasureText): Shape[] {
  const around = shapeBounds(shapes, measure);
  const left = drawing.bounds.left - labelRoom(drawing, 'left', size, measure);
  const right = drawing.bounds.right + labelRoom(drawing, 'right', size, measure);
  const leading = 1.45 * size;
  let y = around.bottom - 4 * size;
  const lines: Shape[] = [words(drawing.title, [left, y], 1.8 * size, { bold: true })];
  y -= 1.4 * leading;
  lines.push(words(drawing.statement, [left, y], 1.2 * size, { bold: true }));
  y -= 1.2 * leading;
  for (const note of templateNotes(drawing)) {
    for (const text of wrapText(note, right - left, size, measure)) {
      lines.push(words(text, [left, y], size));
      y -= leading;
    }
    y -= 0.25 * leading;
  }
  return lines;
}
