import type { WallName } from '../job-file';
import type { CutMethod, Point } from '../panel';
import type { Vec3 } from './vector';

/*
 * Flat coordinates of a piece, mm: as seen from its face and the way up it is fitted (a shelf as seen from above with
 * the back wall away from the viewer): x to the viewer's right, y up, w out of the face from 0 at the back.
 */

export type PieceKind = 'top' | 'side-top' | 'vertical' | 'angle' | 'leg' | 'filler' | 'shelf';

/** A right-handed frame in the alcove: unit axes x, y and w = x × y, out of the piece's face. */
export interface Frame {
  origin: Vec3;
  x: Vec3;
  y: Vec3;
  w: Vec3;
}

/** Where a piece lies at one place along it: the frame whose origin is the point `at` of its own length axis. */
export interface Station {
  at: number;
  frame: Frame;
}

/** Part of a piece: all between two loops with matching corners, `back` at w = from and `face` at w = to. */
export interface Body {
  back: Point[];
  face: Point[];
  from: number;
  to: number;
}

/** A pencil mark, flat coordinates, with the standard deviation (1 sigma), mm, of the edge across itself there. */
export interface PieceMark {
  at: Point;
  sd: number;
}

export interface PieceEdge {
  /** in words: 'left end', 'foot', 'beside the tub' */
  name: string;
  /** `saw`: cut across with a mitre saw; `none`: the stock's own edge */
  method: CutMethod | 'saw' | 'none';
  /** in order along the edge */
  marks: PieceMark[];
}

/** A value in degrees with its standard deviation. */
export interface Angle {
  degrees: number;
  sd: number;
}

/** How an end across a strip is cut. */
export interface PieceEnd {
  name: string;
  joint: 'butt' | 'mitre' | 'scribe';
  /**
   * angle in the face from a square cut, positive where the strip is longer along its outer edge (upper edge of a level
   * strip, front edge of an upright one)
   */
  mitre: Angle;
  /** angle through the thickness from a square cut, positive where the strip is longer at its back */
  bevel: Angle;
}

/** A corner cut out of a strip, mm. */
export interface Notch {
  /** in words: 'lower left' */
  corner: string;
  along: number;
  across: number;
  /** standard deviation of `along` */
  sd: number;
}

/** What the piece hides, mm. */
export interface Cover {
  /** how much the panel's edge wanders under the trim, sheet gaps included */
  taper: number;
  /** least width by which the trim lies on the panel */
  lap: number;
  /** width of panel edge or gap left in sight; 0 where all is covered */
  shows: number;
}

export interface PieceNote {
  text: string;
  /** mm */
  howMuch: number | null;
}

export type Caution = 'saw' | 'knife' | 'jigsaw' | 'dust' | 'adhesive' | 'thin-piece' | 'load';

/** A piece cut to fit: flat shape, thickness, marks, and its place in the alcove. */
export interface Piece {
  id: string;
  kind: PieceKind;
  /** in words: 'left side top' */
  name: string;
  /** the wall whose panel it lies on or stands beside; of a shelf the side wall of its corner */
  wall: WallName;
  /** of the face, counter-clockwise, not closed */
  outline: Point[];
  thickness: number;
  bodies: Body[];
  /** which flat axis runs along the piece */
  axis: 'x' | 'y';
  /** smallest rectangle, along and across, that it can be cut from, mm */
  size: { along: number; across: number };
  edges: PieceEdge[];
  ends: PieceEnd[];
  notches: Notch[];
  /** ascending; one for a piece that stays flat, more for a strip that bends along its length to follow the wall */
  stations: Station[];
  /** of a piece held by tape while its adhesive cures: places along its axis, flat coordinates */
  tape: number[];
  cover: Cover | null;
  /** what it is cut from */
  stock: 'trim' | 'angle-strip' | 'sheet' | 'shelf';
  /** largest 95 % half-width over all marks, mm */
  worst95: number;
  notes: PieceNote[];
  cautions: Caution[];
}
