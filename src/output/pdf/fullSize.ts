import type { Point } from '../../core';
import {
  geometryShapes,
  grown,
  type MeasureText,
  type PanelDrawing,
  type PieceDrawing,
  pieceGeometry,
  type Rectangle,
  type Shape,
  shapeBounds,
} from '../drawing';
import { pieceTileLabels } from './pieceTileLabels';
import { tileLabels } from './tileLabels';
import type { Tiled } from './tilePlan';

/** Length of the stroke at a mark at full size, mm. */
const TICK = 10;
const PIECE_TICK = 6;

/** What is printed at 1:1 over tiles. */
export interface FullSize {
  title: string;
  statement: string;
  /** what the tiles must show */
  tiled: Tiled;
  /** lines without words, and how far they reach */
  shapes: Shape[];
  reach: Rectangle;
  /** the lines that a map of the tiles shows */
  mapShapes: Shape[];
  labels(ground: Rectangle, measure: MeasureText): Shape[];
}

export function panelFullSize(drawing: PanelDrawing): FullSize {
  const { title, statement, bounds } = drawing;
  const bare = { ...drawing, strips: [], sheet: { left: 0, right: 0, bottom: 0, top: 0 } };
  return {
    title,
    statement,
    tiled: drawing,
    shapes: geometryShapes(drawing, TICK),
    reach: grown(bounds, TICK),
    mapShapes: geometryShapes(bare, 0).filter(({ layer }) => layer !== 'sheet' && layer !== 'mark'),
    labels: (ground, measure) => tileLabels(drawing, ground, measure),
  };
}

/** Pieces up to this long are printed whole, mm. */
const WHOLE_UP_TO = 1000;
/** What is printed of a vertical above its scribed foot, mm. */
const ABOVE_FOOT = 40;

/**
 * A piece at full size where that helps at the saw: legs, shelves, short upright fillers, and the scribed foot of a
 * vertical.
 */
export function pieceFullSize(drawing: PieceDrawing): FullSize | null {
  const { kind, axis, outline, bounds, edges } = drawing;
  const long = Math.max(bounds.right - bounds.left, bounds.top - bounds.bottom);
  if (kind === 'leg' || kind === 'shelf' || (kind === 'filler' && axis === 'y' && long <= WHOLE_UP_TO)) {
    return fullSizeOf(drawing, drawing.title, outline);
  }
  const foot = kind === 'vertical' && edges.find(({ name, method }) => name === 'foot' && method === 'jigsaw');
  if (!foot) return null;
  const top = Math.max(...foot.path.map(([, y]) => y)) + ABOVE_FOOT;
  const ends: Point[] = [
    [bounds.left, top],
    [bounds.right, top],
  ];
  return fullSizeOf(drawing, `${drawing.title}, foot`, [...foot.path, ...ends]);
}

function fullSizeOf(drawing: PieceDrawing, title: string, outline: Point[]): FullSize {
  const { statement } = drawing;
  const shapes = pieceGeometry(drawing, PIECE_TICK);
  return {
    title,
    statement,
    tiled: { outline, holes: [] },
    shapes,
    reach: grown(shapeBounds(shapes), 1),
    mapShapes: shapes.filter(({ layer }) => layer !== 'mark'),
    labels: (ground, measure) => pieceTileLabels(drawing, ground, measure),
  };
}
