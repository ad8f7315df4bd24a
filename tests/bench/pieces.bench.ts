import { randomMisfits } from '../reference/trim/randomPieces';
import type { BenchOptions, Row } from './bench';

export const name = 'pieces';
export const about =
  'Trim, legs, fillers and shelves folded up into alcoves known exactly: how far they miss what they are cut to.';

export function run({ count = 500 }: BenchOptions): Row[] {
  const misfits = Array.from({ length: count }, (_, k) =>
    randomMisfits(k + 1).map((misfit) => ({ ...misfit, seed: k + 1 })),
  ).flat();
  const sorted = misfits.toSorted((a, b) => a.by - b.by);
  const at = (share: number): number => sorted[Math.floor(share * (sorted.length - 1))]!.by;
  const worst = sorted.at(-1)!;
  return [
    {
      what: 'misfit of a piece, median',
      value: at(0.5),
      unit: 'mm',
      note: `${sorted.length} places in ${count} alcoves`,
    },
    { what: 'misfit of a piece, 99th', value: at(0.99), unit: 'mm' },
    {
      what: 'misfit of a piece, worst',
      value: worst.by,
      unit: 'mm',
      note: `${worst.piece}, ${worst.where}, alcove ${worst.seed}`,
    },
  ];
}
