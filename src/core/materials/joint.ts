import type { WallName } from '../job-file';
import type { Point } from '../panel';

/** What closes a joint: sealant where water reaches it, paintable caulk at the room side. */
export type JointFiller = 'sealant' | 'caulk';

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
  /** width that thermal movement asks for, mm; null for a closed joint */
  wants: number | null;
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
  };
}

const pathLength = (path: readonly Point[]): number =>
  path.slice(1).reduce((sum, [u, v], i) => sum + Math.hypot(u - path[i]![0], v - path[i]![1]), 0);
