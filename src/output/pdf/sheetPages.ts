import { formatLength, type Job, type Result } from '../../core';
import { drawTitle } from './flow';
import { fitted, type Leaf, type Pack } from './pack';
import { POINT } from './paper';
import { pieceTitle } from './pieceWords';

type SheetInUse = Result['layout']['sheets'][number];

/** Every sheet with what is cut from it and the offcuts worth keeping, one a page; returns the first page. */
export function sheetPages(pack: Pack, job: Job, result: Result): Leaf | null {
  const leaves = result.layout.sheets.map((sheet, i) => sheetPage(pack, job, result, sheet, i));
  return leaves[0] ?? null;
}

function sheetPage(pack: Pack, job: Job, result: Result, sheet: SheetInUse, index: number): Leaf {
  const leaf = pack.addLeaf();
  const length = (mm: number): string => formatLength(mm, { unit: job.display });
  const title = `Sheet ${index + 1} of ${result.layout.sheets.length}`;
  const strapline = `${length(sheet.width)} × ${length(sheet.height)}, drawn from its face. Sizes are those to cut out roughly; each piece is then cut to its own card.`;
  const top = drawTitle(pack, leaf, title, strapline) - 8;
  const { pen, content } = leaf;
  const size = 8 * POINT;
  const list = sheet.offcuts.slice(0, 6).map(({ width, height }) => `${length(width)} × ${length(height)}`);
  const bottom = content.bottom + 8;
  const scale = Math.min((content.right - content.left) / sheet.width, (top - bottom) / sheet.height);
  const left = (content.left + content.right - scale * sheet.width) / 2;
  const at = (x: number, y: number): [number, number] => [left + scale * x, bottom + scale * y];
  const box = (x: number, y: number, width: number, height: number) => {
    const [[x0, y0], [x1, y1]] = [at(x, y), at(x + width, y + height)];
    return { left: x0, bottom: y0, right: x1, top: y1 };
  };
  for (const { x, y, width, height } of sheet.offcuts)
    pen.box(box(x, y, width, height), { width: 0.15, gray: 0.5, dash: [1, 1] });
  pen.box(box(0, 0, sheet.width, sheet.height), { width: 0.6 });
  for (const { piece, x, y, width, height, turned, part } of sheet.placed) {
    const room = box(x, y, width, height);
    pen.box(room, { width: 0.35 });
    const words = [
      `${pieceTitle(piece, job, result)}${part.of > 1 ? ` (${part.number} of ${part.of})` : ''}`,
      `${length(width)} × ${length(height)}${turned ? ', turned' : ''}`,
    ];
    const upright = room.right - room.left < 40 && room.top - room.bottom > room.right - room.left;
    const along = upright ? room.top - room.bottom : room.right - room.left;
    const middle: [number, number] = [(room.left + room.right) / 2, (room.bottom + room.top) / 2];
    words.forEach((text, row) => {
      const down = (row - 0.3) * 1.3 * size;
      const place: [number, number] = upright ? [middle[0] + down, middle[1]] : [middle[0], middle[1] - down];
      pen.text(fitted(text, along - 2, size, pack.measure), place, {
        size,
        align: 'middle',
        bold: row === 0,
        angle: upright ? 90 : 0,
      });
    });
  }
  const offcuts = list.length === 0 ? 'No offcut worth keeping.' : `Offcuts worth keeping (dashed): ${list.join('; ')}`;
  pen.text(fitted(offcuts, content.right - content.left, size, pack.measure), [content.left, content.bottom + 2], {
    size,
  });
  return leaf;
}
