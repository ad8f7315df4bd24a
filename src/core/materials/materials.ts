import { type Alcove, valuesOnly } from '../alcove';
import type { Job, WallName } from '../job-file';
import { bedAt, type Panel, type Problem } from '../panel';
import { type AdhesiveLayout, layAdhesive } from './adhesive';
import { type Joint, type JointFiller, panelJoints } from './joint';
import { type Packs, packsFor } from './packs';
import { jointVolume } from './section';
import { stripLength } from './strips';
import { MM3_PER_ML } from './volume';

/** A figure that a quantity was worked out from. */
export interface MaterialInput {
  label: string;
  value: number;
  unit: 'mm' | 'mm²' | 'mL' | 'share' | 'pieces';
}

/** One thing to buy, with the rule that counts it. */
export interface MaterialLine {
  id: string;
  label: string;
  quantity: number;
  unit: 'mL' | 'mm' | 'pieces';
  /** in words, with its source or 'common practice, no source' */
  rule: string;
  inputs: MaterialInput[];
  packs: Packs;
}

export interface Materials {
  lines: MaterialLine[];
  joints: (Joint & { /** mL, tooling loss included */ volume: number })[];
  adhesive: Record<WallName, AdhesiveLayout>;
}

const PANELS: WallName[] = ['back', 'left', 'right'];

/** Everything to buy for the fitted panels, each line with its rule, and what cannot be sealed. */
export function materialsFor(
  alcove: Alcove,
  job: Job,
  panels: Record<WallName, Panel>,
): { materials: Materials; problems: Problem[] } {
  const joints = panelJoints(valuesOnly(alcove), job, panels).map((joint) => ({
    ...joint,
    volume: volumeOf(joint, job),
  }));
  const adhesive = Object.fromEntries(
    PANELS.map((name) => [name, layAdhesive(panels[name], job.supplies.adhesive, bedAt(alcove, job, panels[name]))]),
  ) as Record<WallName, AdhesiveLayout>;
  const lines = [
    ...PANELS.map((name) => sheetLine(name, job)),
    adhesiveLine(job, adhesive),
    pasteLine('sealant', joints, job),
    pasteLine('caulk', joints, job),
    flashingLine(joints, job),
    stripLine(job, panels),
    painterLine(joints, job),
    alcoholLine(job, panels),
  ];
  return { materials: { lines, joints, adhesive }, problems: wideJoints(joints, job) };
}

function volumeOf(joint: Joint, job: Job): number {
  const { fillet, toolingLoss } = job.supplies[joint.filler];
  return jointVolume(joint.widths, job.fit.thickness, fillet) / (1 - Math.min(toolingLoss, 0.95)) / MM3_PER_ML;
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

function sheetLine(name: WallName, { sheets }: Job): MaterialLine {
  const { width, height } = sheets[name];
  return {
    id: `sheet.${name}`,
    label: `sheet for the ${name} panel`,
    quantity: 1,
    unit: 'pieces',
    rule: 'one sheet for each panel, in the size the job states',
    inputs: [
      { label: 'width', value: width, unit: 'mm' },
      { label: 'height', value: height, unit: 'mm' },
    ],
    packs: packsFor(1, 1),
  };
}

function adhesiveLine({ supplies }: Job, layouts: Record<WallName, AdhesiveLayout>): MaterialLine {
  const { layout, spacing, edgeClear, pressedWidth, cartridge, waste } = supplies.adhesive;
  const pressed = PANELS.reduce((sum, name) => sum + layouts[name].volume, 0) / MM3_PER_ML;
  const quantity = pressed / (1 - Math.min(waste, 0.95));
  const count = PANELS.reduce((sum, name) => sum + layouts[name].dots.length + layouts[name].beads.length, 0);
  return {
    id: 'adhesive',
    label: 'panel adhesive',
    quantity,
    unit: 'mL',
    rule: `${layout} at the stated spacing, clear of edges and holes, each pressed to the thickness of the bed there; follow the spread on the adhesive's own sheet (common practice, no source)`,
    inputs: [
      { label: layout, value: count, unit: 'pieces' },
      { label: 'spacing', value: spacing, unit: 'mm' },
      { label: 'clear of edges', value: edgeClear, unit: 'mm' },
      { label: 'pressed width', value: pressedWidth, unit: 'mm' },
      { label: 'waste', value: waste, unit: 'share' },
    ],
    packs: packsFor(quantity, cartridge),
  };
}

function pasteLine(filler: JointFiller, joints: Materials['joints'], { supplies, fit }: Job): MaterialLine {
  const own = joints.filter((joint) => joint.filler === filler);
  const quantity = own.reduce((sum, { volume }) => sum + volume, 0);
  const { cartridge, fillet, toolingLoss } = supplies[filler];
  return {
    id: filler,
    label: filler === 'sealant' ? 'sealant for wet joints' : 'paintable caulk for the room side',
    quantity,
    unit: 'mL',
    rule: "width along each joint times the depth of fill, and a fillet over it; joints under 1/4 in are filled to the panel's thickness, wider ones to half their width between 1/4 and 1/2 in over a backer (architectural detailing handbooks)",
    inputs: [
      { label: 'length of joints', value: own.reduce((sum, { length }) => sum + length, 0), unit: 'mm' },
      { label: 'fillet leg', value: fillet, unit: 'mm' },
      { label: 'panel thickness', value: fit.thickness, unit: 'mm' },
      { label: 'lost in tooling', value: toolingLoss, unit: 'share' },
    ],
    packs: packsFor(quantity, cartridge),
  };
}

function flashingLine(joints: Joint[], { supplies: { flashingTape } }: Job): MaterialLine {
  const corners = joints.filter(({ id }) => id.startsWith('corner.'));
  const quantity = corners.reduce((sum, { length }) => sum + length + 2 * flashingTape.overlap, 0);
  return {
    id: 'flashing-tape',
    label: 'flashing tape for the inside corners',
    quantity,
    unit: 'mm',
    rule: 'one strip up each inside corner, past both ends by the overlap (common practice, no source)',
    inputs: [
      { label: 'corners', value: corners.length, unit: 'pieces' },
      { label: 'overlap at each end', value: flashingTape.overlap, unit: 'mm' },
    ],
    packs: packsFor(quantity, flashingTape.roll),
  };
}

function stripLine({ supplies: { strips } }: Job, panels: Record<WallName, Panel>): MaterialLine {
  const quantity = PANELS.reduce((sum, name) => sum + stripLength(panels[name], strips), 0);
  return {
    id: 'double-faced-strips',
    label: 'double-faced strip to hold panels while the adhesive cures',
    quantity,
    unit: 'mm',
    rule: 'upright strips no farther apart than the spacing, clear of the edges (common practice, no source)',
    inputs: [
      { label: 'spacing', value: strips.spacing, unit: 'mm' },
      { label: 'clear of edges', value: strips.edgeClear, unit: 'mm' },
    ],
    packs: packsFor(quantity, strips.roll),
  };
}

function painterLine(joints: Joint[], { supplies: { painterTape } }: Job): MaterialLine {
  const length = joints.reduce((sum, joint) => sum + joint.length, 0);
  return {
    id: 'painter-tape',
    label: "painter's tape beside the joints",
    quantity: 2 * length,
    unit: 'mm',
    rule: 'both sides of every joint (common practice, no source)',
    inputs: [{ label: 'length of joints', value: length, unit: 'mm' }],
    packs: packsFor(2 * length, painterTape.roll),
  };
}

function alcoholLine({ supplies: { alcohol } }: Job, panels: Record<WallName, Panel>): MaterialLine {
  const area = PANELS.reduce((sum, name) => sum + panels[name].area, 0);
  const quantity = ((2 * area) / 1e6) * alcohol.perSquareMetre;
  return {
    id: 'cleaning-alcohol',
    label: 'cleaning alcohol',
    quantity,
    unit: 'mL',
    rule: 'back and face of every panel wiped once (common practice, no source)',
    inputs: [
      { label: 'area of panels', value: area, unit: 'mm²' },
      { label: 'for each m²', value: alcohol.perSquareMetre, unit: 'mL' },
    ],
    packs: packsFor(quantity, alcohol.bottle),
  };
}
