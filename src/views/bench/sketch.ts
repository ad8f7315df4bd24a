import {
  type PanelDrawing,
  type PieceDrawing,
  pieceGeometry,
  pieceShapes,
  type Shape,
  templateShapes,
} from '../../output';
import { compactShapes, words } from './compact-shapes';

/** A template to be drawn at whatever scale the screen has room for. */
export interface Sketch {
  bounds: PanelDrawing['bounds'];
  /** @param size font size in mm at the drawing's scale; `wide`: there is room for words at the marks */
  shapes(size: number, wide: boolean): Shape[];
  /** for those who do not see it */
  label: string;
}

export const panelSketch = (drawing: PanelDrawing): Sketch => ({
  bounds: drawing.bounds,
  shapes: (size, wide) => (wide ? templateShapes(drawing, { size, notes: false }) : compactShapes(drawing, size)),
  label: `${drawing.title}, ${drawing.statement}. ${drawing.sizeWords}. Its figures are in the tables.`,
});

export const pieceSketch = (drawing: PieceDrawing): Sketch => ({
  bounds: drawing.bounds,
  shapes: (size, wide) =>
    wide ? pieceShapes(withShortAngles(drawing), { size, notes: false }) : compactPiece(drawing, size),
  label: `${drawing.title}, ${drawing.statement}. ${drawing.sizeWords}. Its figures are in the tables.`,
});

/** Angles without the words which side is longer, which stand beside the template: room on a screen is short. */
const withShortAngles = (drawing: PieceDrawing): PieceDrawing => ({
  ...drawing,
  edges: drawing.edges.map((edge) => ({
    ...edge,
    angles: edge.angles.map((angle) => angle.replace(/, [^,]*longer$/, '')),
  })),
});

/** Lines of the template and the number of each mark beside it. */
function compactPiece(drawing: PieceDrawing, size: number): Shape[] {
  const numbers = drawing.edges.flatMap(({ place, marks }) =>
    marks.map(({ number, at: [x, y] }): Shape => {
      const [dx, dy] = { left: [-0.8, -0.35], right: [0.8, -0.35], bottom: [0, -1.5], top: [0, 0.8] }[place] as [
        number,
        number,
      ];
      const anchor = place === 'left' ? 'end' : place === 'right' ? 'start' : 'middle';
      return words(`${number}`, [x + dx * size, y + dy * size], size, anchor, true);
    }),
  );
  return [...pieceGeometry(drawing, size), ...numbers];
}
