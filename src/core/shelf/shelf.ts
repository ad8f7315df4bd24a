import type { WallName } from '../job-file';
import type { Point } from '../panel';
import type { Angle, Piece } from '../piece';

/** A line for a bracket on a panel's face, along the shelf's underside; wall coordinates, mm. */
export interface BracketLine {
  wall: WallName;
  /** from the corner out */
  from: Point;
  to: Point;
  /** mm per m, negative = falls away from the corner */
  slope: number;
  /** standard deviation of its height */
  sd: number;
}

/** A shelf fitted into an inside corner; its own flat coordinates start where the panels' faces meet at its top. */
export interface ShelfPiece extends Piece {
  kind: 'shelf';
  corner: 'left' | 'right';
  /** height of the top in the corner, from the level line */
  height: number;
  /** inside angle that its back and side edge are cut to, in the plane of the shelf */
  angle: Angle;
  /** fall of the top from the corner towards the room, mm per m */
  slope: number;
  bracketLines: BracketLine[];
  /** clearance between the straight-cut edge and the panel's face, over the length and the thickness of the edge, mm */
  gaps: { wall: WallName; min: number; max: number }[];
}
