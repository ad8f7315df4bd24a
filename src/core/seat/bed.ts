import { type Alcove, towardsRoom } from '../alcove';
import { constant, type Dual, scale, shift, subtract } from '../dual';
import type { Job, WallName } from '../job-file';

/**
 * Thickness of the adhesive bed behind a panel at wall coordinates (u, v), with its derivatives, mm: the job's bed where
 * the sheet touches, and on top of it what the sheet stands off the wall elsewhere.
 * @param sits walls as the backs of the sheets stand, the even bed taken off
 */
export const bedWith =
  (alcove: Alcove, sits: Alcove, { fit }: Job, wall: WallName) =>
  (u: number, v: number): Dual => {
    const place = [constant(u), constant(v)] as const;
    return shift(scale(subtract(sits[wall].at(...place), alcove[wall].at(...place)), towardsRoom(wall)), fit.bed);
  };

/** The same without derivatives. A bent sheet is carried by its splines, which may lie a hair inside the wall: not less than 0. */
export const bedAt =
  (alcove: Alcove, sits: Alcove, { fit }: Job, wall: WallName) =>
  (u: number, v: number): number =>
    Math.max(0, fit.bed + towardsRoom(wall) * (sits[wall].value(u, v) - alcove[wall].value(u, v)));
