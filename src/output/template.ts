import {
  flatAxes,
  type PanelDrawing,
  type PieceDrawing,
  pieceShapes,
  pieceTemplateNotes,
  type Shape,
  templateNotes,
  templateShapes,
} from './drawing';
import { svgText } from './svg';

/** Font size of a template file at full size, mm. */
const TEMPLATE_TEXT = 16;

/** A panel's template as an SVG file in millimetres. */
export function panelSvg(drawing: PanelDrawing): string {
  return svgText(panelFileShapes(drawing), {
    title: `${drawing.title}: cut template`,
    description: [drawing.statement, ...templateNotes(drawing)].join(' '),
  });
}

/** A panel's template as a DXF file in millimetres. */
export async function panelDxf(drawing: PanelDrawing): Promise<string> {
  const { dxfText } = await import('./dxf');
  return dxfText(panelFileShapes(drawing));
}

const panelFileShapes = (drawing: PanelDrawing): Shape[] => [
  ...templateShapes(drawing, { size: TEMPLATE_TEXT, notes: true }),
  ...flatAxes(drawing),
];

/** A piece's template as an SVG file in millimetres. */
export function pieceSvg(drawing: PieceDrawing): string {
  return svgText(pieceFileShapes(drawing), {
    title: `${drawing.title}: cut template`,
    description: [drawing.statement, ...pieceTemplateNotes(drawing)].join(' '),
  });
}

/** A piece's template as a DXF file in millimetres. */
export async function pieceDxf(drawing: PieceDrawing): Promise<string> {
  const { dxfText } = await import('./dxf');
  return dxfText(pieceFileShapes(drawing));
}

/** Type in a piece's file grows with the piece, mm. */
const LEAST_TEXT = 5;
const LARGEST_TEXT = 12;

function pieceFileShapes(drawing: PieceDrawing): Shape[] {
  const { left, right, bottom, top } = drawing.bounds;
  const size = Math.min(LARGEST_TEXT, Math.max(LEAST_TEXT, Math.sqrt((right - left) * (top - bottom)) / 25));
  return [...pieceShapes(drawing, { size, notes: true, rowWidth: 60 * size }), ...flatAxes(drawing)];
}
