import type { WallName } from '../job-file';
import type { Point } from '../panel';

/** What closes a joint: sealant where water reaches it, paintable caulk at the room side. */
export type JointFiller = 'sealant' | 'caulk';

/** What movement asks of a joint's sealant. */
export interface JointMovement {
  /** how far the joint has to give, mm, at the ends of the ranges stated */
  least: number;
  most: number;
  /** width at its narrowest place, mm */
  width: number;
  /** share of that width that the most movement is */
  share: number;
  /** that share over what the sealant's class takes: 1 = all of it */
  used: number;
}

/** A joint to be closed. */
export interface Joint {
  id: string;
  label: string;
  filler: JointFiller;
  /** mm */
  length: number;
  /** width at the room face along the joint, `[along, width]`, mm; a fillet over a closed joint has width 0 */
  widths: [number, number][];
  /** the wall it is drawn on, and where, wall coordinates */
  wall: WallName;
  path: Point[];
  /** width that the most movement asks for, mm; null for a joint with nothing between that could move */
  wants: number | null;
  /** what is asked of its sealant; null for a joint that a fillet alone closes, and for caulk */
  moves: JointMovement | null;
}

/** A joint that takes a fillet only. */
export function closed(
  id: string,
  label: string,
  filler: JointFiller,
  { wall, path, length = pathLength(path) }: { wall: WallName; path: Point[]; length?: number },
): Joint {
  return {
    id,
    label,
    filler,
    length,
    widths: [
      [0, 0],
      [length, 0],
    ],
    wall,
    path,
    wants: null,
    moves: null,
  };
}

const pathLength = (path: readonly Point[]): number =>
  path.slice(1).reduce((sum, [u, v], i) => sum + Math.hypot(u - path[i]![0], v - path[i]![1]), 0);
