import { formatLength, type Job, type Result } from '../../core';
import { pieceTitle, stockWords, unplacedWords } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Which stock length each piece of trim is sawn from; null where that is not planned or there is no trim. */
export function stockPages(pack: Pack, job: Job, result: Result): Leaf | null {
  const { stock } = result;
  if (!stock || (stock.bars.length === 0 && stock.unplaced.length === 0)) return null;
  const text = (mm: number) => formatLength(mm, { unit: job.display });
  const { trim, cutting } = job;
  const flow = new Flow(
    pack,
    'Stock lengths',
    `Saw to these lengths, in this order; each is ${text(trim.allowance)} longer than its piece, to be cut to its card. A saw cut is counted as ${text(cutting.kerf)}.`,
  );
  const first = flow.leaf;
  flow.paragraph(stockWords(stock, job));
  const unplaced = unplacedWords(stock, job, result);
  if (unplaced !== null) flow.framed('From no length', [unplaced]);
  flow.table(
    [
      { title: 'Length', bold: true },
      { title: 'Stock', align: 'end' },
      { title: 'Piece' },
      { title: 'Saw to', align: 'end', bold: true },
      { title: 'Left over', align: 'end' },
    ],
    stock.bars.flatMap(({ length, cuts, left }, i) =>
      cuts.map((cut, k) => [
        `${i + 1}`,
        text(length),
        pieceTitle(cut.piece, job, result),
        text(cut.length),
        k === cuts.length - 1 ? text(left) : '',
      ]),
    ),
    9 * POINT,
  );
  return first;
}
