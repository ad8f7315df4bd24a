import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { type Alcove, towardsRoom } from '../alcove';
import { constant, scale, subtract } from '../dual';
import type { Job, WallName } from '../job-file';
import { centred, clearOf } from '../materials';
import type { Panel } from '../panel';
import { type Seat, shimPlane } from '../seat';
import type { BedReport } from './report';

/**
 * Shims that bring a sheet to the plane that touches its wall's high points: on a square grid over the panel, clear of
 * edges and holes as its adhesive is, as thick as the wall lies behind that plane. Row by row from the bottom.
 */
export function shimsFor(
  alcove: Alcove,
  covariance: Matrix,
  job: Job,
  panel: Panel,
  { region }: Seat,
): BedReport['shims'] {
  const name: WallName = panel.name;
  const { shimTo, shimSpacing, leastShim } = job.bedding;
  const plane = shimPlane(alcove[name], name, job, region);
  const clear = clearOf(panel, job.supplies.adhesive.edgeClear);
  const places = (axis: 0 | 1): number[] =>
    centred(
      panel.outline.map((point) => point[axis]),
      shimSpacing,
    );
  const list = places(1)
    .flatMap((v) => places(0).map((u) => ({ u, v })))
    .filter(({ u, v }) => clear([u, v]))
    .map(({ u, v }) => {
      const at = [constant(u), constant(v)] as const;
      const behind = scale(subtract(plane.at(...at), alcove[name].at(...at)), towardsRoom(name));
      return { u, v, thickness: behind.value, sd: standardDeviation(behind, covariance) };
    })
    .filter(({ thickness }) => thickness >= leastShim);
  return { to: shimTo, list, lean: towardsRoom(name) * plane.gradient(0, 0)[1] * 1000 };
}
