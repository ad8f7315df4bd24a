import type { Job } from '../job-file';
import type { Result } from '../result';
import { boughtLength } from './boughtLength';
import { type PriceLine, priceLine } from './line';
import { MM_OF, priceSold, soldLength } from './soldLength';

/** Trim by its width, angle strips, shelves. What is sold by length is charged by the foot or the metre. */
export function stripLines(job: Job, result: Pick<Result, 'pieces' | 'stock'>): PriceLine[] {
  const { prices } = job;
  const { trim, shelves } = result.pieces;
  const strips = trim.filter(({ stock }) => stock === 'trim');
  const angles = trim.filter(({ stock }) => stock === 'angle-strip');
  const angleLength = angles.reduce((sum, { size }) => sum + size.along + job.trim.allowance, 0);
  const by = soldLength(job.display);
  const line = (id: string, label: string, mm: number, metre: number | undefined): PriceLine =>
    priceLine(id, 'materials', label, [mm / MM_OF[by], by], metre === undefined ? undefined : priceSold(metre, by));
  const widest = Math.max(job.trim.width, job.trim.verticalWidth ?? 0);
  return [
    ...(strips.length === 0
      ? []
      : [
          line(
            'trim',
            `Trim, ${strips.length} piece${strips.length === 1 ? '' : 's'} cut from whole lengths`,
            result.stock?.bought ?? boughtLength(job, strips),
            trimMetre(job, widest),
          ),
        ]),
    ...(angles.length === 0
      ? []
      : [line('angle-strip', 'Angle strip for the inside corners', angleLength, prices.angleStrip)]),
    ...(shelves.length === 0
      ? []
      : [priceLine('shelf', 'materials', 'Corner shelf, cut to fit', [shelves.length, 'piece'], prices.shelf)]),
  ];
}

/** The price a metre of the narrowest listed trim that holds the width; undefined where none does. */
function trimMetre({ prices }: Job, width: number): number | undefined {
  const holding = prices.trim.filter(({ upTo }) => upTo >= width - 1e-6).sort((a, b) => a.upTo - b.upTo);
  return holding[0]?.metre;
}
