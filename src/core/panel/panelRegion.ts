import type { Alcove } from '../alcove';
import type { Region } from '../flatten';
import type { Job } from '../job-file';
import { boundaryOf, outlineOf, regionOf } from './boundary';
import { panelEdges } from './edges';
import type { PanelName } from './panel';
import { withRoom } from './room';

/** Rectangle of wall coordinates that a panel on an even bed covers. */
export const panelRegion = (alcove: Alcove, job: Job, name: PanelName): Region =>
  regionOf(outlineOf(boundaryOf(withRoom(panelEdges(alcove, job, name)))));
