import type { Rectangle } from '../drawing';
import { type Block, blocksHeight, drawBlocks } from './blocks';
import { drawTitle } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Type is set no smaller, unless the words would fill the card, mm. */
export const SMALLEST = 7.2 * POINT;

/** A page of its own with a title, sentences at its foot, and the room left for a drawing. */
export function cardLeaf(
  pack: Pack,
  { title, statement, blocks }: { title: string; statement: string; blocks: Block[] },
): { leaf: Leaf; room: Rectangle } {
  const leaf = pack.addLeaf();
  const top = drawTitle(pack, leaf, title, statement);
  const { content } = leaf;
  const width = content.right - content.left;
  let size = 8.5 * POINT;
  let height = blocksHeight(blocks, width, size, pack);
  const share = () => height / (top - content.bottom);
  while (share() > (size > SMALLEST ? 0.38 : 0.6) && size > POINT) {
    size -= 0.5 * POINT;
    height = blocksHeight(blocks, width, size, pack);
  }
  drawBlocks(blocks, leaf, content.bottom + height + 1, width, size, pack);
  return {
    leaf,
    room: { left: content.left, right: content.right, bottom: content.bottom + height + 3, top: top - 2 },
  };
}
