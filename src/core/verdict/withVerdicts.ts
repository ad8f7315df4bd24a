import type { AdjustmentReport } from '../adjust';
import type { CornerReport, Diagnosis, RimReport, WallReport } from '../diagnose';
import type { Job, Side, WallName } from '../job-file';
import type { Panel } from '../panel';
import { cornerVerdict } from './corner';
import type { PlaceVerdict, WallVerdict } from './report';
import { rimVerdict } from './rim';
import { wallVerdict } from './wall';

export interface JudgedDiagnosis extends Omit<Diagnosis, 'walls' | 'corners' | 'rim'> {
  walls: Record<WallName, WallReport & { verdict: WallVerdict }>;
  corners: Record<Side, CornerReport & { verdict: PlaceVerdict }>;
  rim: RimReport & { verdict: PlaceVerdict };
}

/** Adds to what is out of true what it means for the panels, by the tolerances that the job picks. */
export function withVerdicts(
  job: Job,
  adjustment: Pick<AdjustmentReport, 'parameters' | 'suspects'>,
  { walls, corners, rim, front }: Diagnosis,
  panels: Record<WallName, Panel>,
): JudgedDiagnosis {
  const wall = (name: WallName) => ({
    ...walls[name],
    verdict: wallVerdict(job, adjustment, name, walls[name], panels[name]),
  });
  const corner = (side: Side) => {
    const [back, out] = walls[side].judged.at;
    return { ...corners[side], verdict: cornerVerdict(job, adjustment, side, corners[side], out - back) };
  };
  return {
    walls: { back: wall('back'), left: wall('left'), right: wall('right') },
    corners: { left: corner('left'), right: corner('right') },
    rim: { ...rim, verdict: rimVerdict(job, adjustment, rim) },
    front,
  };
}
