import { type Job, type Result, Z_95 } from '../../core';
import { capital, lengthsOf, type PieceDrawing } from '../drawing';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';
import { pieceCardPage } from './pieceCard';

/** Trim, legs, fillers and shelves: a table of them all, then a cut card each; null where the job has none. */
export function piecePages(pack: Pack, job: Job, { pieces }: Result, drawings: readonly PieceDrawing[]): Leaf | null {
  const all = [...pieces.trim, ...pieces.legs, ...pieces.shelves, ...pieces.fillers];
  if (all.length === 0) return null;
  const { fine, plusMinus } = lengthsOf(job);
  const flow = new Flow(
    pack,
    'Trim, legs and shelves',
    'Each has a cut card on the pages that follow. ± holds in 95 of 100 cases; where it is large, cut long and scribe on the dry fit.',
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: 'Piece', bold: true },
      { title: 'Cut from' },
      { title: 'Length', align: 'end', bold: true },
      { title: 'Width', align: 'end' },
      { title: 'Thick', align: 'end' },
      { title: 'Widest ±', align: 'end' },
    ],
    all.map(({ name, stock, size, thickness, worst95 }) => [
      capital(name),
      stock.replace('-', ' '),
      fine(size.along).text,
      fine(size.across).text,
      fine(thickness).text,
      plusMinus(worst95 / Z_95).text,
    ]),
    8 * POINT,
  );
  for (const { id } of all) {
    const drawing = drawings.find((each) => each.id === id);
    if (drawing) pieceCardPage(pack, drawing);
  }
  return first;
}
