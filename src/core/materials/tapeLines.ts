import { type Job, WALLS } from '../job-file';
import type { FittedForMaterials } from './fittedForMaterials';
import type { MaterialLine, Materials } from './materialLine';
import { packsFor } from './packs';
import { stripLength } from './strips';

/** Tapes by the roll, and what the panels are wiped with. */
export function tapeLines(
  job: Job,
  fitted: FittedForMaterials,
  { adhesive, joints }: Pick<Materials, 'adhesive' | 'joints'>,
): MaterialLine[] {
  return [
    flashingLine(joints, job),
    stripLine(job, fitted, adhesive),
    painterLine(joints, fitted, job),
    alcoholLine(job, fitted),
  ];
}

function flashingLine(joints: Materials['joints'], { supplies: { flashingTape } }: Job): MaterialLine {
  const corners = joints.filter(({ id }) => id.startsWith('corner.'));
  const quantity = corners.reduce((sum, { length }) => sum + length + 2 * flashingTape.overlap, 0);
  return {
    id: 'flashing-tape',
    label: 'flashing tape for the inside corners',
    quantity,
    unit: 'mm',
    rule: 'one strip up each inside corner, past both ends by the overlap (common practice, no source)',
    inputs: [
      ...corners.map(({ label, length }) => ({ label, value: length, unit: 'mm' as const })),
      { label: 'overlap at each end', value: flashingTape.overlap, unit: 'mm' },
    ],
    packs: packsFor(quantity, flashingTape.roll),
  };
}

function stripLine(
  { supplies: { strips } }: Job,
  { trim, legs }: FittedForMaterials,
  adhesive: Materials['adhesive'],
): MaterialLine {
  const behindPanels = WALLS.reduce((sum, name) => sum + stripLength(adhesive[name].strips), 0);
  const behindPieces = [...trim, ...legs].reduce((sum, { tape, size }) => sum + tape.length * size.across, 0);
  return {
    id: 'double-faced-strips',
    label: 'double-faced strip to hold panels and trim while the adhesive cures',
    quantity: behindPanels + behindPieces,
    unit: 'mm',
    rule: 'upright strips no farther apart than the spacing, clear of the edges, and a piece across trim at each of its places (common practice, no source)',
    inputs: [
      {
        label: 'strips behind panels',
        value: WALLS.reduce((n, name) => n + adhesive[name].strips.length, 0),
        unit: 'pieces',
      },
      { label: 'behind panels', value: behindPanels, unit: 'mm' },
      { label: 'behind trim and legs', value: behindPieces, unit: 'mm' },
      { label: 'spacing', value: strips.spacing, unit: 'mm' },
      { label: 'clear of edges', value: strips.edgeClear, unit: 'mm' },
    ],
    packs: packsFor(behindPanels + behindPieces, strips.roll),
  };
}

function painterLine(
  joints: Materials['joints'],
  { trim }: FittedForMaterials,
  { supplies: { painterTape } }: Job,
): MaterialLine {
  const length = joints.reduce((sum, joint) => sum + joint.length, 0);
  const held = trim.reduce((sum, { size }) => sum + size.along, 0);
  const quantity = 2 * length + held;
  return {
    id: 'painter-tape',
    label: "painter's tape beside the joints and over the trim",
    quantity,
    unit: 'mm',
    rule: 'both sides of every joint, and the length of the trim once more to hold it while it cures (common practice, no source)',
    inputs: [
      { label: 'length of joints', value: length, unit: 'mm' },
      { label: 'length of trim', value: held, unit: 'mm' },
    ],
    packs: packsFor(quantity, painterTape.roll),
  };
}

function alcoholLine({ supplies: { alcohol } }: Job, { panels }: FittedForMaterials): MaterialLine {
  const area = WALLS.reduce((sum, name) => sum + panels[name].area, 0);
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
