import { wrapText } from '../drawing';
import type { Leaf, Pack } from './pack';

/** A sentence on a card, with its sign before it. */
export interface Block {
  text: string;
  bold: boolean;
  mark: string;
  /** size over the size of the other blocks */
  scale?: number;
}

const INDENT = 4;
const LEADING = 1.28;
const GAP = 0.25;

function setBlock({ text, bold, scale = 1 }: Block, width: number, size: number, pack: Pack) {
  const own = scale * size;
  return { own, lines: wrapText(text, width - INDENT, own, pack.measure, bold) };
}

/** mm */
export function blocksHeight(blocks: Block[], width: number, size: number, pack: Pack): number {
  return blocks.reduce((height, block) => {
    const { own, lines } = setBlock(block, width, size, pack);
    return height + (lines.length * LEADING + GAP) * own;
  }, 0);
}

export function drawBlocks(
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
