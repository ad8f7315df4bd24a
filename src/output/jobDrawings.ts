import type { Job, Result, WallName } from '../core';
import { type PanelDrawing, type PieceDrawing, panelDrawing, pieceDrawing, type View } from './drawing';

const panelNames: WallName[] = ['back', 'left', 'right'];

/** The template drawings of a job's panels, back panel first. */
export function jobDrawings(job: Job, result: Result, view: View = 'face'): PanelDrawing[] {
  return panelNames.map((name) => panelDrawing(result.panels[name], job, result.problems, view, result.advice));
}

/** The template drawings of every cut piece besides the panels: trim, legs, fillers, shelves. */
export function pieceDrawings(job: Job, { pieces }: Pick<Result, 'pieces'>, view: View = 'face'): PieceDrawing[] {
  const { trim, legs, fillers, shelves } = pieces;
  return [...trim, ...legs, ...fillers, ...shelves].map((piece) => pieceDrawing(piece, job, view));
}
