import { type PanelDrawing, templateNotes, templateShapes } from './drawing';
import { svgText } from './svg';

/** Font size of a template file at full size, mm. */
export const TEMPLATE_TEXT = 16;

/** A panel's template as an SVG file in millimetres. */
export function panelSvg(drawing: PanelDrawing): string {
  return svgText(templateShapes(drawing, { size: TEMPLATE_TEXT, notes: true }), {
    title: `${drawing.title}: cut template`,
    description: [drawing.statement, ...templateNotes(drawing)].join(' '),
  });
}

/** A panel's template as a DXF file in millimetres. */
export async function panelDxf(drawing: PanelDrawing): Promise<string> {
  const { dxfText } = await import('./dxf');
  return dxfText(templateShapes(drawing, { size: TEMPLATE_TEXT, notes: true }));
}
