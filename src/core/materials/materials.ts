import { type Alcove, valuesOnly } from '../alcove';
import { type Job, WALLS, type WallName } from '../job-file';
import type { Problem } from '../panel';
import { bedAt, type Seating } from '../seat';
import { type AdhesiveLayout, layAdhesive } from './adhesive';
import type { FittedForMaterials } from './fittedForMaterials';
import type { Joint } from './joint';
import type { Materials } from './materialLine';
import { panelJoints } from './panelJoints';
import { pasteLines } from './pasteLines';
import { coveredBy, pieceJoints } from './pieceJoints';
import { jointVolume } from './section';
import { stockLines } from './stockLines';
import { tapeLines } from './tapeLines';
import { beforeLoss, MM3_PER_ML } from './volume';

/** Everything to buy for what is fitted, each line with its rule, and what cannot be sealed. */
export function materialsFor(
  alcove: Alcove,
  job: Job,
  fitted: FittedForMaterials,
  { sits, edges }: Pick<Seating, 'sits' | 'edges'>,
): { materials: Materials; problems: Problem[] } {
  const { panels } = fitted;
  const all = [
    ...panelJoints(valuesOnly(edges), job, panels, coveredBy(fitted)),
    ...pieceJoints(fitted, job.supplies.movement),
  ];
  const joints = all.map((joint) => ({ ...joint, volume: volumeOf(joint, job) }));
  const adhesive = Object.fromEntries(
    WALLS.map((name) => [
      name,
      layAdhesive(panels[name], job.supplies.adhesive, job.supplies.strips, bedAt(alcove, sits, job, name)),
    ]),
  ) as Record<WallName, AdhesiveLayout>;
  const lines = [
    ...stockLines(job, fitted),
    ...pasteLines(job, fitted, { adhesive, joints }),
    ...tapeLines(job, fitted, { adhesive, joints }),
  ];
  return {
    materials: { lines, joints, adhesive },
    problems: [...wideJoints(joints, job), ...overworkedJoints(joints)],
  };
}

function volumeOf(joint: Joint, job: Job): number {
  const { fillet, toolingLoss } = job.supplies[joint.filler];
  return beforeLoss(jointVolume(joint.widths, job.fit.thickness, fillet), toolingLoss) / MM3_PER_ML;
}

function wideJoints(joints: Joint[], { supplies }: Job): Problem[] {
  return joints.flatMap(({ id, label, widths }) => {
    const widest = Math.max(...widths.map(([, width]) => width));
    if (widest <= supplies.widestJoint) return [];
    return [
      {
        where: `joints.${id}`,
        what: `the joint at the ${label} is too wide for sealant; scribe closer or cover it with trim and a filler`,
        howMuch: widest,
      },
    ];
  });
}

function overworkedJoints(joints: Joint[]): Problem[] {
  return joints.flatMap(({ id, label, moves }) => {
    if (moves === null || moves.used <= 1) return [];
    return [
      {
        where: `joints.${id}`,
        what: `the joint at the ${label} moves by more than its sealant's class takes; make it wider, as wide as here, or take a sealant that moves more`,
        howMuch: moves.width * moves.used,
      },
    ];
  });
}
