import type { Alcove } from '../alcove';
import type { Job } from '../job-file';
import type { EdgeName, PanelName } from '../panel';
import { behindFront, type EdgeRule, offWall, overRimAt } from './rule';

/** Edge rules of a panel: clear of side walls or back panel, rim and front edge by the joint at the tighter face. */
export function panelRules(
  alcove: Alcove,
  seats: Alcove,
  { fit, rim }: Job,
  panel: PanelName,
): Partial<Record<EdgeName, EdgeRule>> {
  const depths = [0, fit.thickness];
  const rules = {
    bottom: { depths, clear: (point) => overRimAt(alcove, rim, point) - fit.rimJoint },
    top: { depths, clear: ([, y]) => fit.top - y },
  } satisfies Partial<Record<EdgeName, EdgeRule>>;
  if (panel === 'back') {
    return {
      ...rules,
      left: { depths, clear: (point) => offWall(alcove, 'left', point) - fit.cornerJoint },
      right: { depths, clear: (point) => offWall(alcove, 'right', point) - fit.cornerJoint },
    };
  }
  const backFace = fit.bed + fit.thickness;
  return {
    ...rules,
    back: { depths, clear: (point) => offWall(seats, 'back', point) - backFace - fit.cornerJoint },
    front: { depths, clear: (point) => behindFront(alcove, panel, point) - fit.frontSetBack },
  };
}
