import type { Alcove } from '../alcove';
import { developMap, type FlatMap, planeMap } from '../flatten';
import type { Job } from '../job-file';
import { regionOf } from './boundary';
import type { PanelName, Point } from './panel';

/** How a panel with this outline lies flat: it follows a bowed wall or, rigid, is a plane. */
export function flatMapOf(alcove: Alcove, { fit }: Job, name: PanelName, outline: readonly Point[]): FlatMap {
  const region = regionOf(outline);
  return fit.flexible ? developMap(alcove[name], region) : planeMap(alcove[name], region);
}
