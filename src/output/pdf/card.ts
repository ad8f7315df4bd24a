import {
  edgeSentence,
  type PanelDrawing,
  placeShapes,
  type Rectangle,
  type Shape,
  shapeBounds,
  templateShapes,
  wrapText,
} from '../drawing';
import { holeCaution, methodCautions } from './cautions';
import { drawShapes } from './drawShapes';
import { drawTitle } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Font sizes tried for the dimensions, in points. */
const SIZES = [12, 11, 10, 9, 8, 7, 6, 5, 4];

/** Type is set no smaller, unless the words of a panel would fill the card, mm. */
const SMALLEST = 7.2 * POINT;

interface Block {
  text: string;
  bold: boolean;
  mark: string;
  /** size over the size of the other blocks */
  scale?: number;
}

/** The dimension card: one panel on one page, to be carried to the saw. */
export function cardPage(pack: Pack, drawing: PanelDrawing): Leaf {
  const leaf = pack.addLeaf();
  const top = drawTitle(pack, leaf, `${drawing.title}: cut card`, drawing.statement);
  const { content, pen } = leaf;
  const width = content.right - content.left;
  const blocks = cardBlocks(drawing);
  let size = 8.5 * POINT;
  let height = blocksHeight(blocks, width, size, pack);
  const share = () => height / (top - content.bottom);
  while (share() > (size > SMALLEST ? 0.38 : 0.6) && size > POINT) {
    size -= 0.5 * POINT;
    height = blocksHeight(blocks, width, size, pack);
  }
  const room: Rectangle = {
    left: content.left,
    right: content.right,
    bottom: content.bottom + height + 3,
    top: top - 2,
  };
  drawShapes(pen, fitTemplate(drawing, room, pack));
  drawBlocks(blocks, leaf, content.bottom + height + 1, width, size, pack);
  return leaf;
}

/** The template with its dimensions, room shared so that the size of type times the scale of the panel is largest. */
function fitTemplate(drawing: PanelDrawing, room: Rectangle, pack: Pack): Shape[] {
  const [width, height] = [room.right - room.left, room.top - room.bottom];
  const bare = Math.min(
    width / (drawing.bounds.right - drawing.bounds.left),
    height / (drawing.bounds.top - drawing.bounds.bottom),
  );
  const fits = SIZES.map((points) => {
    const fit = atSize(drawing, points * POINT, width, height, bare, pack);
    return { ...fit, worth: fit.scale * points * (hasTurnedLabels(fit.shapes) ? 0.6 : 1) };
  });
  const { shapes } = fits.reduce((best, fit) => (fit.worth > best.worth ? fit : best));
  const box = shapeBounds(shapes, pack.measure);
  return placeShapes(shapes, 1, [
    (room.left + room.right) / 2 - (box.left + box.right) / 2,
    (room.bottom + room.top) / 2 - (box.bottom + box.top) / 2,
  ]);
}

/** Labels (bold, unlike edge names) that are read with the head on one side. */
const hasTurnedLabels = (shapes: Shape[]): boolean =>
  shapes.some((shape) => shape.kind === 'words' && shape.bold && shape.angle !== 0);

/** The largest scale at which a template with this type fits, found by bisection on the laid-out shapes. */
function atSize(
  drawing: PanelDrawing,
  size: number,
  width: number,
  height: number,
  bare: number,
  pack: Pack,
): { shapes: Shape[]; scale: number } {
  const layOut = (scale: number) =>
    placeShapes(
      templateShapes(drawing, {
        size: size / scale,
        measure: pack.measure,
        notes: false,
        cropped: true,
        rowWidth: width / scale,
        smallest: SMALLEST / scale,
      }),
      scale,
      [0, 0],
    );
  const fits = (shapes: Shape[]) => {
    const box = shapeBounds(shapes, pack.measure);
    return box.right - box.left <= width && box.top - box.bottom <= height;
  };
  let [low, high] = [0.02 * bare, bare];
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (fits(layOut(middle))) low = middle;
    else high = middle;
  }
  return { shapes: layOut(low), scale: low };
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
    ...drawing.edges.map((edge) => ({
      text: `${edge.title}: ${edgeSentence(edge)}`,
      bold: edge.leave !== null,
      mark: edge.leave ? '*' : '–',
    })),
    ...drawing.holes.map((hole) => ({
      text:
        `${hole.name}: Ø ${hole.diameter.text}; centre ${hole.fromDatum.text} ${hole.side.across} of plumb line, ${hole.fromLevel.text} ${hole.side.up} level line; ${hole.aboveRimWords}, ${hole.fromWords}` +
        `${hole.fromEdge ? `; on the panel ${hole.fromEdge.distance.text} from the ${hole.fromEdge.title}` : ''}${hole.fromBottom ? ` and ${hole.fromBottom.text} up from the bottom edge` : ''}`,
      bold: false,
      mark: 'Ø',
    })),
    { text: cautions.join(' '), bold: false, mark: '!', scale: 0.9 },
  ];
}

const INDENT = 4;
const LEADING = 1.28;
const GAP = 0.25;

function setBlock({ text, bold, scale = 1 }: Block, width: number, size: number, pack: Pack) {
  const own = scale * size;
  return { own, lines: wrapText(text, width - INDENT, own, pack.measure, bold) };
}

function blocksHeight(blocks: Block[], width: number, size: number, pack: Pack): number {
  return blocks.reduce((height, block) => {
    const { own, lines } = setBlock(block, width, size, pack);
    return height + (lines.length * LEADING + GAP) * own;
  }, 0);
}

function drawBlocks(
  blocks: Block[],
  { pen, content }: Leaf,
  top: number,
  width: number,
  size: number,
  pack: Pack,
): void {
  let y = top;
  for (const block of blocks) {
    const { own, lines } = setBlock(block, width, size, pack);
    lines.forEach((line, i) => {
      y -= LEADING * own;
      if (i === 0 && block.mark) pen.text(block.mark, [content.left, y], { size: own, bold: true });
      pen.text(line, [content.left + INDENT, y], { size: own, bold: block.bold });
    });
    y -= GAP * own;
  }
}
