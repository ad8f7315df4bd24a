import type { Adjustment } from '../adjust';
import { insideCorner } from '../alcove';
import type { Job, Side } from '../job-file';
import { cornerReport } from './corner';
import type { CornerReport, FrontReport, RimReport, WallReport } from './report';
import { frontReport, rimReport } from './rim';
import { type WallExtent, wallReport } from './wall';

export interface Diagnosis {
  walls: Record<'back' | Side, WallReport>;
  corners: Record<Side, CornerReport>;
  rim: RimReport;
  front: Record<Side, FrontReport>;
}

/** Walls are drawn this far above the panels' top, mm. */
const DRAWN_ABOVE = 150;
/** A stretch shorter than this is judged and drawn as if it were this long, mm. */
const LEAST_STRETCH = 100;

/** What is out of true in the adjusted alcove: walls, corners, rim and front edges, each with its standard deviation. */
export function diagnose({ alcove, covariance }: Adjustment, job: Job): Diagnosis {
  const left = insideCorner(alcove, 'left', 0).x.value;
  const right = Math.max(insideCorner(alcove, 'right', 0).x.value, left + LEAST_STRETCH);
  const bottom = alcove.rim.value((left + right) / 2, 0);
  const top = Math.max(job.fit.top, bottom + LEAST_STRETCH);
  const depth = (side: Side): number => Math.max(alcove.front[side].value(0, 0), LEAST_STRETCH);
  const extent = (at: [number, number]): WallExtent => ({
    at,
    height: [bottom, top],
    drawn: [bottom, top + DRAWN_ABOVE],
  });
  const wall = (name: 'back' | Side, at: [number, number]): WallReport =>
    wallReport(alcove, covariance, name, extent(at));
  const heights = [bottom, ...(bottom < 0 && top > 0 ? [0] : []), top];
  const corner = (side: Side): CornerReport => cornerReport(alcove, covariance, side, heights);
  const front = (side: Side): FrontReport => frontReport(alcove, covariance, side, [bottom, top + DRAWN_ABOVE]);
  return {
    walls: {
      back: wall('back', [left, right]),
      left: wall('left', [0, depth('left')]),
      right: wall('right', [0, depth('right')]),
    },
    corners: { left: corner('left'), right: corner('right') },
    rim: rimReport(alcove, covariance, [left, right], [0, job.rim.width]),
    front: { left: front('left'), right: front('right') },
  };
}
