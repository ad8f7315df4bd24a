import type { WallReport } from './report';

/** How far a wall is out of plumb over a height: lengths in mm. */
export interface Lean {
  /** 0 or more */
  value: number;
  /** 1 sigma */
  sd: number;
  /** true where the wall comes into the room going up */
  into: boolean;
}

/** Out of plumb over a height in mm, from the mm per m that the report states. */
export function leanOver({ plumb, plumbSd }: Pick<WallReport, 'plumb' | 'plumbSd'>, height: number): Lean {
  return { value: Math.abs((plumb * height) / 1000), sd: (plumbSd * height) / 1000, into: plumb >= 0 };
}
