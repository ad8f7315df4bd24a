import type { Alcove } from '../alcove';
import { constant } from '../dual';
import { type Job, SIDES, type Side, WALLS } from '../job-file';
import { contourRise, type Panel, type PanelName, type Point, panelEdges } from '../panel';
import { extent, spaced } from '../range';
import { closed, type Joint } from './joint';
import { moving } from './moving';

const STEPS = 24;
const CIRCLE = 24;

/** Ids of the panels' joints that trim covers, so that none is closed there. */
export type Covered = (id: string) => boolean;

/**
 * Every joint of the panels, in the alcove whose walls are where the panels' backs stand: corners, rim and holes wet,
 * front edges and tops at the room side where no trim covers them.
 */
export function panelJoints(alcove: Alcove, job: Job, panels: Record<PanelName, Panel>, covered: Covered): Joint[] {
  return [
    ...SIDES.map((side) => cornerJoint(alcove, job, side, panels[side])),
    ...WALLS.map((name) => rimJoint(alcove, job, panels[name])),
    ...WALLS.flatMap((name) => holeJoints(panels[name])),
    ...SIDES.map((side) => frontJoint(alcove, job, side, panels[side])),
    ...WALLS.map((name) => topJoint(panels[name])),
  ].filter(({ id }) => !covered(id));
}

/** Where a side panel meets the back panel's face, at the room face of the side panel. */
function cornerJoint(alcove: Alcove, job: Job, side: Side, panel: Panel): Joint {
  const face = job.fit.bed + job.fit.thickness;
  const { lower } = panelEdges(alcove, job, side);
  const [bottom, top] = extent(panel.outline, 1);
  const path = spaced(bottom, top, STEPS + 1).map((v): Point => [lower.at(v).value, v]);
  const widths = path.map(([z, v]): [number, number] => {
    const x = alcove[side].value(z, v) + (side === 'left' ? face : -face);
    return [v - bottom, z - (alcove.back.value(x, v) + face)];
  });
  const [back, front] = extent(panel.outline, 0);
  const joint = {
    id: `corner.${side}`,
    label: `${side} inside corner`,
    filler: 'sealant' as const,
    length: top - bottom,
    widths,
    wall: side,
    path,
  };
  return moving(joint, front - back, job.supplies.movement);
}

/** Where a panel stands over the rim, at its room face. */
function rimJoint(alcove: Alcove, job: Job, panel: Panel): Joint {
  const face = job.fit.bed + job.fit.thickness;
  const [from, to] = extent(panel.outline, 0);
  const bottom = panelEdges(alcove, job, panel.name).bottom;
  const path = spaced(from, to, STEPS + 1).map((u): Point => [u, bottom(u).value]);
  const widths = path.map(([u, v]): [number, number] => {
    const [x, z] =
      panel.name === 'back'
        ? [u, alcove.back.value(u, v) + face]
        : [alcove[panel.name].value(u, v) + (panel.name === 'left' ? face : -face), u];
    return [u - from, v - alcove.rim.value(x, z) - contourRise(job.rim, constant(z)).value];
  });
  const [low, high] = extent(panel.outline, 1);
  const joint = {
    id: `rim.${panel.name}`,
    label: `rim under the ${panel.name} panel`,
    filler: 'sealant' as const,
    length: to - from,
    widths,
    wall: panel.name,
    path,
  };
  return moving(joint, high - low, job.supplies.movement);
}

const holeJoints = ({ name, holes }: Panel): Joint[] =>
  holes.map(({ id, u, v, diameter }) =>
    closed(`hole.${id}`, `around ${id} in the ${name} panel`, 'sealant', {
      wall: name,
      path: Array.from({ length: CIRCLE + 1 }, (_, k): Point => {
        const angle = (2 * Math.PI * k) / CIRCLE;
        return [u + (diameter / 2) * Math.cos(angle), v + (diameter / 2) * Math.sin(angle)];
      }),
      length: Math.PI * diameter,
    }),
  );

function frontJoint(alcove: Alcove, job: Job, side: Side, panel: Panel): Joint {
  const { upper } = panelEdges(alcove, job, side);
  const [bottom, top] = extent(panel.outline, 1);
  return closed(`front.${side}`, `front edge of the ${side} panel`, 'caulk', {
    wall: side,
    path: spaced(bottom, top, STEPS + 1).map((v): Point => [upper.at(v).value, v]),
    length: top - bottom,
  });
}

function topJoint(panel: Panel): Joint {
  const [from, to] = extent(panel.outline, 0);
  const [, top] = extent(panel.outline, 1);
  return closed(`top.${panel.name}`, `top of the ${panel.name} panel`, 'caulk', {
    wall: panel.name,
    path: [
      [from, top],
      [to, top],
    ],
  });
}
