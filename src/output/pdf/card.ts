import { edgeSentence, type PanelDrawing, templateShapes } from '../drawing';
import type { Block } from './blocks';
import { cardLeaf, SMALLEST } from './cardLeaf';
import { holeCaution, methodCautions } from './cautions';
import { drawShapes } from './drawShapes';
import { fitShapes } from './fitShapes';
import type { Leaf, Pack } from './pack';

/** The dimension card: one panel on one page, to be carried to the saw. */
export function cardPage(pack: Pack, drawing: PanelDrawing): Leaf {
  const { title, statement, bounds } = drawing;
  const { leaf, room } = cardLeaf(pack, { title: `${title}: cut card`, statement, blocks: cardBlocks(drawing) });
  const shapes = fitShapes(
    ({ size, scale, rowWidth }) =>
      templateShapes(drawing, {
        size,
        rowWidth,
        measure: pack.measure,
        notes: false,
        cropped: true,
        smallest: SMALLEST / scale,
      }),
    bounds,
    room,
    pack,
  );
  drawShapes(leaf.pen, shapes);
  return leaf;
}

function cardBlocks(drawing: PanelDrawing): Block[] {
  const methods = new Set(drawing.edges.map(({ method }) => method));
  const cautions = (['knife', 'jigsaw', 'plane'] as const)
    .filter((method) => methods.has(method))
    .map((method) => methodCautions[method]);
  if (drawing.holes.length > 0) cautions.push(holeCaution);
  return [
    ...drawing.problems.map((text) => ({ text: `Solve before cutting: ${text}`, bold: true, mark: '!' })),
    { text: `Sheet ${drawing.sheetWords}; panel ${drawing.sizeWords}.`, bold: true, mark: '' },
    { text: drawing.levelLine.setOut, bold: false, mark: '1' },
    { text: drawing.plumbDatum.setOut, bold: false, mark: '2' },
    {
      text: 'Set out each mark: along its edge first, then square off the control line (bold). Join the marks with straight cuts. ± holds in 95 of 100 cases.',
      bold: false,
      mark: '3',
    },
    {
      text: [drawing.kerfWords, ...(drawing.grain ? [drawing.grain.words] : [])].join(' '),
      bold: false,
      mark: '–',
    },
    ...drawing.edges.map((edge) => ({
      text: `${edge.title}: ${edgeSentence(edge)}`,
      bold: edge.leave !== null,
      mark: edge.leave ? '*' : '–',
    })),
    ...drawing.holes.map((hole) => ({
      text:
        `${hole.name}: Ø ${hole.diameter.text}, ${hole.toolWords}; centre ${hole.fromDatum.text} ${hole.side.across} of plumb line, ${hole.fromLevel.text} ${hole.side.up} level line; ${hole.aboveRimWords}, ${hole.fromWords}` +
        `${hole.fromEdge ? `; on the panel ${hole.fromEdge.distance.text} from the ${hole.fromEdge.title}` : ''}${hole.fromBottom ? ` and ${hole.fromBottom.text} up from the bottom edge` : ''}${hole.advice.length > 0 ? `. Advice: ${hole.advice.join(' ')}` : ''}`,
      bold: false,
      mark: 'Ø',
    })),
    { text: cautions.join(' '), bold: false, mark: '!', scale: 0.9 },
  ];
}
