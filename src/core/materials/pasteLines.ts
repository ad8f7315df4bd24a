import { type Job, WALLS } from '../job-file';
import type { FittedForMaterials } from './fittedForMaterials';
import type { JointFiller } from './joint';
import type { MaterialLine, Materials } from './materialLine';
import { packsFor } from './packs';
import { backedLength } from './section';
import { beforeLoss, MM3_PER_ML } from './volume';

/** What comes in cartridges: adhesive, sealant, caulk; and the backer behind wide joints. */
export function pasteLines(
  job: Job,
  fitted: FittedForMaterials,
  { adhesive, joints }: Pick<Materials, 'adhesive' | 'joints'>,
): MaterialLine[] {
  return [
    adhesiveLine(job, fitted, adhesive),
    jointLine('sealant', joints, job),
    jointLine('caulk', joints, job),
    ...backerLine(joints, job),
  ];
}

function adhesiveLine(
  { supplies }: Job,
  { trim, legs }: FittedForMaterials,
  layouts: Materials['adhesive'],
): MaterialLine {
  const { layout, spacing, edgeClear, pressedWidth, trimBead, cartridge, waste } = supplies.adhesive;
  const strips = [...trim, ...legs].reduce((sum, { size }) => sum + size.along, 0);
  const behindPanels = WALLS.reduce((sum, name) => sum + layouts[name].volume, 0);
  const behindPieces = strips * (Math.PI / 4) * trimBead ** 2;
  const quantity = beforeLoss(behindPanels + behindPieces, waste) / MM3_PER_ML;
  const count = WALLS.reduce((sum, name) => sum + layouts[name].dots.length + layouts[name].beads.length, 0);
  const beds = WALLS.flatMap((name) => layouts[name].bed ?? []);
  return {
    id: 'adhesive',
    label: 'panel adhesive',
    quantity,
    unit: 'mL',
    rule: `${layout} at the stated spacing, clear of edges and holes, each pressed to the thickness of the bed there, and a round bead along trim and legs; follow the spread on the adhesive's own sheet (common practice, no source)`,
    inputs: [
      { label: layout, value: count, unit: 'pieces' },
      { label: 'spacing', value: spacing, unit: 'mm' },
      { label: 'clear of edges', value: edgeClear, unit: 'mm' },
      { label: 'pressed width', value: pressedWidth, unit: 'mm' },
      ...(beds.length === 0
        ? []
        : ([
            { label: 'bed, thinnest', value: Math.min(...beds.map(({ min }) => min)), unit: 'mm' },
            { label: 'bed, thickest', value: Math.max(...beds.map(({ max }) => max)), unit: 'mm' },
          ] as const)),
      { label: 'pressed, behind panels', value: behindPanels / MM3_PER_ML, unit: 'mL' },
      { label: 'length of trim and legs', value: strips, unit: 'mm' },
      { label: 'round bead along them', value: trimBead, unit: 'mm' },
      { label: 'waste', value: waste, unit: 'share' },
    ],
    packs: packsFor(quantity, cartridge),
  };
}

function jointLine(filler: JointFiller, joints: Materials['joints'], { supplies, fit }: Job): MaterialLine {
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
      { label: 'joints', value: own.length, unit: 'pieces' },
      { label: 'length of joints', value: own.reduce((sum, { length }) => sum + length, 0), unit: 'mm' },
      { label: 'fillet leg', value: fillet, unit: 'mm' },
      { label: 'panel thickness', value: fit.thickness, unit: 'mm' },
      { label: 'lost in tooling', value: toolingLoss, unit: 'share' },
    ],
    packs: packsFor(quantity, cartridge),
  };
}

function backerLine(joints: Materials['joints'], { supplies: { backerRod } }: Job): MaterialLine[] {
  const backed = joints.map((joint) => backedLength(joint.widths)).filter((length) => length > 0);
  const quantity = backed.reduce((sum, length) => sum + length, 0);
  if (quantity === 0) return [];
  return [
    {
      id: 'backer-rod',
      label: 'backer rod behind wide joints',
      quantity,
      unit: 'mm',
      rule: 'the stretches of joint 1/4 in wide and more, rod a quarter wider than the joint (architectural detailing handbooks)',
      inputs: [{ label: 'joints with such a stretch', value: backed.length, unit: 'pieces' }],
      packs: packsFor(quantity, backerRod.roll),
    },
  ];
}
