import type { Alcove } from '../alcove';
import type { Job } from '../job-file';
import { regionOf } from './boundary';
import type { Panel } from './panel';
import { hollowAt, intoRoom } from './resting';

/**
 * Thickness of the adhesive bed behind a panel, mm, at wall coordinates (u, v): the job's bed where the sheet follows
 * the wall; behind a rigid sheet the bed at the high points it rests on, and the hollow on top of it elsewhere.
 */
export function bedAt(
  alcove: Alcove,
  job: Job,
  { name, outline }: Pick<Panel, 'name' | 'outline'>,
): (u: number, v: number) => number {
  if (job.fit.flexible) return () => job.fit.bed;
  const hollow = hollowAt(intoRoom(alcove[name], name), regionOf(outline));
  return (u, v) => job.fit.bed + hollow(u, v);
}
