import type { Alcove } from '../alcove';
import { constant } from '../dual';
import type { Job, Side } from '../job-file';
import { contourRise, type Panel, type PanelName, panelEdges } from '../panel';

/** What closes a joint: sealant where water reaches it, paintable caulk at the room side. */
export type JointFiller = 'sealant' | 'caulk';

/** A joint to be closed. */
export interface Joint {
  id: string;
  label: string;
  filler: JointFiller;
  /** mm */
  length: number;
  /** width at the room face along the joint, `[along, width]`, mm; a fillet over a closed joint has width 0 */
  widths: [number, number][];
}

const STEPS = 24;

/** Every joint of the panels: corners and rim and holes wet, front edges and tops at the room side. */
export function panelJoints(alcove: Alcove, job: Job, panels: Record<PanelName, Panel>): Joint[] {
  const sides: Side[] = ['left', 'right'];
  return [
    ...sides.map((side) => cornerJoint(alcove, job, side, panels[side])),
    ...(['back', ...sides] as PanelName[]).map((name) => rimJoint(alcove, job, panels[name])),
    ...(['back', ...sides] as PanelName[]).flatMap((name) => holeJoints(panels[name])),
    ...sides.map((side) => frontJoint(side, panels[side])),
    ...(['back', ...sides] as PanelName[]).map((name) => topJoint(panels[name])),
  ];
}

/** Where a side panel meets the back panel's face, at the room face of the side panel. */
function cornerJoint(alcove: Alcove, job: Job, side: Side, panel: Panel): Joint {
  const face = job.fit.bed + job.fit.thickness;
  const { lower } = panelEdges(alcove, job, side);
  const [bottom, top] = rangeOf(panel, 1);
  const widths = steps(bottom, top).map((v): [number, number] => {
    const z = lower.at(v).value;
    const x = alcove[side].value(z, v) + (side === 'left' ? face : -face);
    return [v - bottom, z - (alcove.back.value(x, v) + face)];
  });
  return { id: `corner.${side}`, label: `${side} inside corner`, filler: 'sealant', length: top - bottom, widths };
}

/** Where a panel stands over the rim, at its room face. */
function rimJoint(alcove: Alcove, job: Job, panel: Panel): Joint {
  const face = job.fit.bed + job.fit.thickness;
  const [from, to] = rangeOf(panel, 0);
  const bottom = panelEdges(alcove, job, panel.name).bottom;
  const widths = steps(from, to).map((u): [number, number] => {
    const v = bottom(u).value;
    const [x, z] =
      panel.name === 'back'
        ? [u, alcove.back.value(u, v) + face]
        : [alcove[panel.name].value(u, v) + (panel.name === 'left' ? face : -face), u];
    return [u - from, v - alcove.rim.value(x, z) - contourRise(job.rim, constant(z)).value];
  });
  return {
    id: `rim.${panel.name}`,
    label: `rim under the ${panel.name} panel`,
    filler: 'sealant',
    length: to - from,
    widths,
  };
}

const holeJoints = ({ name, holes }: Panel): Joint[] =>
  holes.map(({ id, diameter }) =>
    closed(`hole.${id}`, `around ${id} in the ${name} panel`, 'sealant', Math.PI * diameter),
  );

const frontJoint = (side: Side, panel: Panel): Joint =>
  closed(`front.${side}`, `front edge of the ${side} panel`, 'caulk', extent(panel, 1));

const topJoint = (panel: Panel): Joint =>
  closed(`top.${panel.name}`, `top of the ${panel.name} panel`, 'caulk', extent(panel, 0));

const closed = (id: string, label: string, filler: JointFiller, length: number): Joint => ({
  id,
  label,
  filler,
  length,
  widths: [
    [0, 0],
    [length, 0],
  ],
});

function rangeOf({ outline }: Panel, axis: 0 | 1): [number, number] {
  const values = outline.map((point) => point[axis]);
  return [Math.min(...values), Math.max(...values)];
}

const extent = (panel: Panel, axis: 0 | 1): number => {
  const [from, to] = rangeOf(panel, axis);
  return to - from;
};

const steps = (from: number, to: number): number[] =>
  Array.from({ length: STEPS + 1 }, (_, k) => from + ((to - from) * k) / STEPS);
