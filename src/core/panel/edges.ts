import type { Alcove } from '../alcove';
import { constant, shift } from '../dual';
import type { Job, Side } from '../job-file';
import { againstBack, besideWall, type EdgeAt, overRim } from './clearance';
import { contourKinks } from './contour';
import type { EdgeName, PanelName } from './panel';

/**
 * The four edges of a panel on its wall. `lower` and `upper` bound u at each height v; `bottom` and `top` bound v at
 * each u.
 */
export interface PanelEdges {
  lower: { name: EdgeName; at: EdgeAt };
  upper: { name: EdgeName; at: EdgeAt };
  bottom: EdgeAt;
  /** u at which the bottom turns sharply, ascending */
  bottomKinks: number[];
  top: EdgeAt;
}

/**
 * Edge rules of design section 5: cut square, clear of the neighbour at the tighter of the panel's two faces.
 * @param seats the alcove with its walls where the panels' backs stand, the even bed taken off
 */
export function panelEdges(alcove: Alcove, job: Job, panel: PanelName, seats = alcove): PanelEdges {
  return panel === 'back' ? backEdges(alcove, job, seats) : sideEdges(seats, job, panel);
}

function backEdges(alcove: Alcove, { fit, rim }: Job, seats: Alcove): PanelEdges {
  const faces = [fit.bed, fit.bed + fit.thickness];
  return {
    lower: { name: 'left', at: besideWall(alcove, 'left', faces, fit.cornerJoint, seats.back) },
    upper: { name: 'right', at: besideWall(alcove, 'right', faces, fit.cornerJoint, seats.back) },
    bottom: overRim(seats, rim, 'back', faces, fit.rimJoint),
    bottomKinks: [],
    top: () => constant(fit.top),
  };
}

function sideEdges(alcove: Alcove, { fit, rim }: Job, side: Side): PanelEdges {
  const faces = [fit.bed, fit.bed + fit.thickness];
  const backPanelFace = fit.bed + fit.thickness;
  return {
    lower: { name: 'back', at: againstBack(alcove, side, faces, backPanelFace + fit.cornerJoint) },
    upper: { name: 'front', at: frontLine(alcove, side, fit.frontSetBack) },
    bottom: overRim(alcove, rim, side, faces, fit.rimJoint),
    bottomKinks: contourKinks(rim),
    top: () => constant(fit.top),
  };
}

/** Where a side panel ends at the front: u at each height, short of the wall's front edge by the set-back. */
export const frontLine =
  (alcove: Alcove, side: Side, setBack: number): EdgeAt =>
  (height) =>
    shift(alcove.front[side].at(constant(0), constant(height)), -setBack);
