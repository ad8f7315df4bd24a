import type { Job, PanelHole, PanelName, Piece, Result } from '../../core';
import { type ControlLine, controlLines } from './control-lines';
import { type CutStrip, cutStrips } from './cut-strips';
import { exaggerated } from './exaggerate';
import type { MeshData, Vec3 } from './mesh-data';
import { type PanelSolid, panelSolid } from './panel-solid';
import { type PieceSolid, pieceSolid } from './piece-solid';
import { type RimSolid, rimSolid } from './rim-solid';
import { type AlcoveShape, alcoveShape } from './shape';
import { wallMesh } from './wall-mesh';
import { intoRoom, moved, onWall } from './wall-place';

export interface DrawnPanel {
  name: PanelName;
  solid: PanelSolid;
  strips: CutStrip[];
  holes: { hole: PanelHole; at: Vec3 }[];
}

/** What can be shown or left out. */
export type Layer = 'walls' | 'panels' | 'slivers' | PieceLayer;
export type PieceLayer = 'trim' | 'legs' | 'shelves';

export interface DrawnPiece {
  id: string;
  name: string;
  kind: Piece['kind'];
  layer: PieceLayer;
  solid: PieceSolid;
  /** on its face, for its name */
  at: Vec3;
}

/** The box that the alcove would fill if it were true, mm; what the camera looks at. */
export interface Box {
  left: number;
  right: number;
  bottom: number;
  top: number;
  front: number;
}

/** All that is drawn of a job, as triangles and lines in the alcove's frame. */
export interface DrawnAlcove {
  box: Box;
  walls: MeshData[];
  rim: RimSolid;
  lines: ControlLine[];
  panels: DrawnPanel[];
  pieces: DrawnPiece[];
  /** where a point of the alcove as measured is drawn, panels and pieces on their walls */
  place: (point: Vec3) => Vec3;
}

const names = ['back', 'left', 'right'] as const;

/**
 * Builds the drawing of a job.
 * @param factor times further out of true than it is
 * @param off distance that panels are drawn off their walls, mm
 */
export function drawnAlcove(result: Result, job: Job, factor: number, off: number): DrawnAlcove {
  const shape = alcoveShape(result);
  const place = exaggerated(shape, factor);
  const { bed } = job.fit;
  const drawnPanel = (name: PanelName): DrawnPanel => {
    const panel = result.panels[name];
    const at = (point: Vec3) => moved(place(point), intoRoom(name), off);
    const face = onWall(shape, name, bed + panel.thickness + 1);
    return {
      name,
      solid: panelSolid(shape, panel, bed, at),
      strips: cutStrips(shape, panel, bed, factor, at),
      holes: panel.holes.map((hole) => ({ hole, at: at(face(hole.u, hole.v)) })),
    };
  };
  const drawnPiece =
    (layer: PieceLayer) =>
    (piece: Piece): DrawnPiece => {
      const solid = pieceSolid(piece, (point) => movedOff(piece, place(point), off));
      return { id: piece.id, name: piece.name, kind: piece.kind, layer, solid, at: middle(solid.outlines[0]!) };
    };
  const { trim, fillers, legs, shelves } = result.pieces;
  return {
    box: boxOf(shape, job),
    place,
    walls: names.map((name) => wallMesh(shape, name, place)),
    rim: rimSolid(shape, job.rim, place),
    lines: controlLines(shape, place),
    panels: names.map(drawnPanel),
    pieces: [
      ...trim.map(drawnPiece('trim')),
      ...[...legs, ...fillers].map(drawnPiece('legs')),
      ...shelves.map(drawnPiece('shelves')),
    ],
  };
}

/** Trim is drawn this many times as far off the walls as the panels that it lies on. */
const trimOff = 1.6;

/** Where a piece is drawn with panels `off` mm off their walls: a shelf stays in its corner of the panels. */
function movedOff({ kind, wall }: Piece, point: Vec3, off: number): Vec3 {
  if (kind === 'shelf' || kind === 'angle') {
    const side = wall === 'back' ? (point[0] < 0 ? 'left' : 'right') : wall;
    return moved(moved(point, intoRoom('back'), off), intoRoom(side), off);
  }
  return moved(point, intoRoom(wall), kind === 'leg' || kind === 'filler' ? off : trimOff * off);
}

const middle = (points: readonly Vec3[]): Vec3 => {
  const sum = (axis: 0 | 1 | 2) => points.reduce((total, point) => total + point[axis], 0) / points.length;
  return [sum(0), sum(1), sum(2)];
};

export function boxOf({ nominal, top }: AlcoveShape, { rim }: Job): Box {
  const { left, right, front } = nominal;
  return { left, right, bottom: nominal.rim - rim.apronHeight, top, front };
}
