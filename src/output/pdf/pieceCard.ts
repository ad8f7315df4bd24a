import { type PieceDrawing, pieceShapes, shortened } from '../drawing';
import type { Block } from './blocks';
import { cardLeaf } from './cardLeaf';
import { pieceCautions } from './cautions';
import { drawShapes } from './drawShapes';
import { fitShapes } from './fitShapes';
import type { Leaf, Pack } from './pack';

/** Small pieces are drawn no larger than this. */
const LARGEST_SCALE = 1.5;

/** The dimension card of a piece: one page, to be carried to the saw. */
export function pieceCardPage(pack: Pack, drawing: PieceDrawing): Leaf {
  const { title, statement } = drawing;
  const drawn = shortened(drawing);
  const blocks = pieceBlocks(drawn);
  const { leaf, room } = cardLeaf(pack, { title: `${title}: cut card`, statement, blocks });
  const shapes = fitShapes(
    ({ size, rowWidth }) => pieceShapes(drawn, { size, rowWidth, measure: pack.measure, notes: false }),
    drawn.bounds,
    room,
    pack,
    LARGEST_SCALE,
  );
  drawShapes(leaf.pen, shapes);
  return leaf;
}

function pieceBlocks(drawing: PieceDrawing): Block[] {
  const { wallWords, sizeWords, edges, notes, cautions, back, breaks } = drawing;
  const plain = (text: string, mark = '–'): Block => ({ text, bold: false, mark });
  return [
    { text: `${sizeWords}. ${wallWords}`, bold: true, mark: '' },
    plain(
      `Measure from the piece’s own left and lower ends as drawn. ± holds in 95 of 100 cases.${breaks.length > 0 ? ' Shortened at the zigzag lines; all figures are true.' : ''}${back ? ' Dashed: the cut at the back.' : ''}`,
      '',
    ),
    ...edges.map(({ title, methodWords, angles, leave }) => ({
      text: `${title}: ${[methodWords, ...angles, ...(leave ? [leave] : [])].join('; ')}`,
      bold: leave !== null,
      mark: leave ? '*' : '–',
    })),
    ...notes.map((note) => plain(note)),
    { ...plain(cautions.map((caution) => pieceCautions[caution]).join(' '), '!'), scale: 0.9 },
  ];
}
