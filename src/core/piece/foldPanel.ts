import type { Alcove } from '../alcove';
import { toWall } from '../flatten';
import type { Job } from '../job-file';
import { flatMapOf, type Panel } from '../panel';
import type { Fold } from './fold';
import { pointOffWall } from './wallStrip';

/**
 * Where every point of a flat panel comes to lie in the alcove: sheet coordinates (x, y) as in `panel.flat`, w off the
 * panel's back, level towards the room.
 * @param alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function foldPanel(alcove: Alcove, job: Job, panel: Pick<Panel, 'name' | 'outline'>): Fold {
  const flat = flatMapOf(alcove, job, panel.name, panel.outline);
  return (x, y, w) => pointOffWall(alcove, panel.name, job.fit.bed + w, ...toWall(flat, x, y));
}
