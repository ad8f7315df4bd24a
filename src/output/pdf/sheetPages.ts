import type { Job, Result } from '../../core';
import type { Rectangle } from '../drawing';
import { offcutWords, placedWords, sizeWords } from '../words';
import { drawTitle } from './flow';
import { fitted, type Leaf, type Pack } from './pack';
import { POINT } from './paper';

type SheetInUse = Result['layout']['sheets'][number];

/** Every sheet with what is cut from it and the offcuts worth keeping, one a page; returns the first page. */
export function sheetPages(pack: Pack, job: Job, result: Result): Leaf | null {
  const leaves = result.layout.sheets.map((sheet, i) => sheetPage(pack, job, result, sheet, i));
  return leaves[0] ?? null;
}

/** Text smaller than this cannot be read, mm high. */
const SIZE = 8 * POINT;

function sheetPage(pack: Pack, job: Job, result: Result, sheet: SheetInUse, index: number): Leaf {
  const leaf = pack.addLeaf();
  const { pen, content } = leaf;
  const title = `Sheet ${index + 1} of ${result.layout.sheets.length}`;
  const strapline = `${sizeWords(sheet, job)}, drawn from its face. Sizes are those to cut out roughly; each piece is then cut to its own card.`;
  const top = drawTitle(pack, leaf, title, strapline) - 4;
  const legend = [
    ...sheet.placed.map((placed, i) => `${i + 1}  ${placedWords(placed, job, result)}`),
    offcutWords(sheet, job),
  ];
  const step = 1.35 * SIZE;
  const bottom = content.bottom + step * legend.length + 3;
  legend.forEach((line, i) => {
    const y = content.bottom + step * (legend.length - i - 0.5);
    pen.text(fitted(line, content.right - content.left, SIZE, pack.measure), [content.left, y], { size: SIZE });
  });

  const scale = Math.min((content.right - content.left) / sheet.width, (top - bottom) / sheet.height);
  const left = (content.left + content.right - scale * sheet.width) / 2;
  const box = ({ x, y, width, height }: SheetInUse['offcuts'][number]): Rectangle => ({
    left: left + scale * x,
    right: left + scale * (x + width),
    bottom: bottom + scale * y,
    top: bottom + scale * (y + height),
  });
  for (const offcut of sheet.offcuts) pen.box(box(offcut), { width: 0.15, gray: 0.5, dash: [1, 1] });
  pen.box(box({ x: 0, y: 0, width: sheet.width, height: sheet.height }), { width: 0.6 });
  sheet.placed.forEach((placed, i) => {
    const room = box(placed);
    pen.box(room, { width: 0.35 });
    number(leaf, i + 1, room);
  });
  return leaf;
}

/** The piece's number in its middle, or beside its end where it is too thin to hold one. */
function number({ pen }: Leaf, which: number, { left, right, bottom, top }: Rectangle): void {
  const [x, y] = [(left + right) / 2, (bottom + top) / 2 - 0.35 * SIZE];
  const style = { size: SIZE, bold: true } as const;
  if (top - bottom > 1.3 * SIZE && right - left > 2 * SIZE) pen.text(`${which}`, [x, y], { ...style, align: 'middle' });
  else if (right - left > top - bottom)
    pen.text(`${which}`, [right + 0.8, y - 0.1], { ...style, size: Math.min(SIZE, 2.2) });
  else pen.text(`${which}`, [x, top + 0.8], { ...style, align: 'middle' });
}
