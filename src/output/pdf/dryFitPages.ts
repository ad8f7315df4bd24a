import type { Job, Result } from '../../core';
import { capital } from '../drawing';
import { dryFitFault, dryFitWords, misfitText, pieceTitle } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Every template as folded back into the alcove: its worst edge and by how much; null where none was tried. */
export function dryFitPages(pack: Pack, job: Job, result: Result): Leaf | null {
  const { dryFit } = result;
  if (!dryFit) return null;
  const flow = new Flow(
    pack,
    'Virtual dry fit',
    'Every template was read back from its file, folded up into the alcove as measured, and its edges held against what they must clear, joints taken off. It says that the files are true to the readings, not that the readings are true to the walls: try every piece dry.',
  );
  const first = flow.leaf;
  const words = dryFitWords(dryFit, job, result);
  if (dryFitFault(dryFit, job, result) === null) flow.paragraph(words, { bold: true });
  else flow.framed('Do not cut', [words]);
  flow.table(
    [
      { title: 'Template', bold: true },
      { title: 'Edges', align: 'end' },
      { title: 'Worst at' },
      { title: 'Reaches too far', align: 'end' },
      { title: 'Falls short', align: 'end' },
    ],
    dryFit.pieces.map(({ piece, edges }) => {
      const by = ({ overlap, gap }: (typeof edges)[number]) => Math.max(overlap, gap);
      const [first, ...others] = edges;
      if (!first) return [pieceTitle(piece, job, result), '0', '–', '–', '–'];
      const worst = others.reduce((most, edge) => (by(edge) > by(most) ? edge : most), first);
      const [over, short] = [edges.map(({ overlap }) => overlap), edges.map(({ gap }) => gap)];
      return [
        pieceTitle(piece, job, result),
        `${edges.length}`,
        capital(worst.edge),
        misfitText(Math.max(...over)),
        misfitText(Math.max(...short)),
      ];
    }),
    8 * POINT,
  );
  return first;
}
