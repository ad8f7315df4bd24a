import type { Job } from '../job-file';
import type { FittedForMaterials } from './fittedForMaterials';
import type { MaterialInput, MaterialLine } from './materialLine';
import { packsFor } from './packs';

/** Sheets by size, trim and angle strip by the length, brackets and screws by the box. */
export function stockLines(job: Job, fitted: FittedForMaterials): MaterialLine[] {
  return [
    ...sheetLines(fitted),
    ...lengthLine(job, fitted, 'trim', 'trim'),
    ...lengthLine(job, fitted, 'angle-strip', 'angle strip for the inside corners'),
    ...bracketLines(job, fitted),
  ];
}

function sheetLines({ layout }: FittedForMaterials): MaterialLine[] {
  const sizes = new Map<string, { width: number; height: number; count: number }>();
  for (const { width, height } of layout.sheets) {
    const key = `${width} ${height}`;
    const known = sizes.get(key) ?? { width, height, count: 0 };
    sizes.set(key, { ...known, count: known.count + 1 });
  }
  return [...sizes.values()].map(({ width, height, count }, i) => ({
    id: `sheet.${i + 1}`,
    label: sizes.size === 1 ? 'sheets' : `sheets, size ${i + 1} of ${sizes.size}`,
    quantity: count,
    unit: 'pieces',
    rule: 'as the sheet layout takes them',
    inputs: [
      { label: 'width', value: width, unit: 'mm' },
      { label: 'height', value: height, unit: 'mm' },
    ],
    packs: packsFor(count, 1),
  }));
}

function lengthLine(
  { trim, cutting }: Job,
  fitted: FittedForMaterials,
  stock: 'trim' | 'angle-strip',
  label: string,
): MaterialLine[] {
  const pieces = fitted.trim.filter((piece) => piece.stock === stock);
  if (pieces.length === 0) return [];
  const length = Math.max(...trim.stock.map((each) => each.length));
  const cuts = pieces.map(({ size }) => size.along + trim.allowance + cutting.kerf);
  const quantity = cuts.reduce((sum, cut) => sum + cut, 0);
  const count = barsFor(cuts, length + cutting.kerf);
  return [
    {
      id: stock,
      label,
      quantity,
      unit: 'mm',
      rule: `pieces with their allowance and a saw cut each, longest first into the first length that holds them${stock === 'trim' ? '; the stock plan may do with less' : ''}`,
      inputs: sawnInputs(pieces.length, { trim, cutting }),
      packs: { size: length, count, leftOver: Math.max(0, count * length - quantity) },
    },
  ];
}

/** What the length of pieces to be sawn is counted from. */
export const sawnInputs = (pieces: number, { trim, cutting }: Pick<Job, 'trim' | 'cutting'>): MaterialInput[] => [
  { label: 'pieces', value: pieces, unit: 'pieces' },
  { label: 'allowance on each', value: trim.allowance, unit: 'mm' },
  { label: 'saw cut', value: cutting.kerf, unit: 'mm' },
];

/**
 * How many bars hold the cuts, first-fit decreasing; a cut longer than a bar takes as many as reach along it.
 * @param cuts, bar lengths in mm, a saw cut added to each
 */
export function barsFor(cuts: readonly number[], bar: number): number {
  const left: number[] = [];
  for (const cut of [...cuts].sort((a, b) => b - a)) {
    const found = left.findIndex((rest) => rest >= cut - 1e-9);
    if (found >= 0) left[found]! -= cut;
    else {
      const whole = Math.max(1, Math.ceil(cut / bar - 1e-9));
      for (let k = 1; k < whole; k++) left.push(0);
      left.push(whole * bar - cut);
    }
  }
  return left.length;
}

function bracketLines({ supplies: { brackets } }: Job, { shelves }: FittedForMaterials): MaterialLine[] {
  if (shelves.length === 0) return [];
  const count = shelves.length * Math.ceil(brackets.perShelf);
  const screws = count * Math.ceil(brackets.screws);
  return [
    {
      id: 'shelf-brackets',
      label: 'brackets for the shelves',
      quantity: count,
      unit: 'pieces',
      rule: 'as many for each shelf, along its lines on the panels (common practice, no source)',
      inputs: [
        { label: 'shelves', value: shelves.length, unit: 'pieces' },
        { label: 'for each shelf', value: brackets.perShelf, unit: 'pieces' },
      ],
      packs: packsFor(count, 1),
    },
    {
      id: 'screws',
      label: 'stainless screws for the brackets',
      quantity: screws,
      unit: 'pieces',
      rule: 'as many for each bracket, into blocking or studs or a fixing made for the wall, each bedded in sealant (common practice, no source)',
      inputs: [
        { label: 'brackets', value: count, unit: 'pieces' },
        { label: 'for each bracket', value: brackets.screws, unit: 'pieces' },
      ],
      packs: packsFor(screws, Math.max(1, Math.ceil(brackets.box))),
    },
  ];
}
