import type { Alcove } from '../alcove';
import { developMap, type FlatMap, planeMap } from '../flatten';
import type { Job } from '../job-file';
import { regionOf } from './boundary';
import type { PanelName, Point } from './panel';

/**
 * How a panel with this outline lies flat: bent as its wall or as it sits or, rigid, a plane.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function flatMapOf(seats: Alcove, { fit, bedding }: Job, name: PanelName, outline: readonly Point[]): FlatMap {
  const region = regionOf(outline);
  const bent = bedding.edges === 'seated' && bedding.stiffness === 'stated';
  const shimmed = bedding.edges === 'shimmed';
  return (fit.flexible || bent) && !shimmed ? developMap(seats[name], region) : planeMap(seats[name], region);
}
