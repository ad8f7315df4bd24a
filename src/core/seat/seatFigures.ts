import type { Alcove } from '../alcove';
import { gridOver } from '../flatten';
import type { Job, WallName } from '../job-file';
import { bedAt } from './bed';
import { bendingStrain, largestCurvature } from './bending';
import type { Seating } from './seatPanels';

const STEPS = 24;

/** Thickest bed, mm, and largest strain at a face of the sheet from bending. */
export function seatFigures(
  alcove: Alcove,
  job: Job,
  { seats, sits }: Seating,
  name: WallName,
): { bedMax: number; bendingStrain: number } {
  const { region, how } = seats[name];
  const bed = bedAt(alcove, sits, job, name);
  return {
    bedMax: how === 'follows' ? job.fit.bed : Math.max(...gridOver(region, STEPS).map(([u, v]) => bed(u, v))),
    bendingStrain: bendingStrain(job.fit.thickness, largestCurvature(sits[name], region, how === 'bent' ? STEPS : 8)),
  };
}
