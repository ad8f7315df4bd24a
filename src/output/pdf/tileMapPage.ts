import type { Point } from '../../core';
import { corners, type MeasureText, placeShapes, type Rectangle, wrapText } from '../drawing';
import { counted } from '../words';
import { drawCheckBars } from './checkBars';
import { drawShapes } from './drawShapes';
import { drawTitle } from './flow';
import type { FullSize } from './fullSize';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';
import { OVERLAP, printedCount, type TilePlan } from './tilePlan';

/** How a panel's full-size pages lie together, with the number of the page that carries each. */
export function tileMapPage(pack: Pack, full: FullSize, plan: TilePlan): Leaf {
  const leaf = pack.addLeaf();
  const { pen, content } = leaf;
  let y = drawTitle(
    pack,
    leaf,
    `${full.title}: full-size template`,
    `${full.statement}. ${counted(printedCount(plan), 'page')} of ${plan.paper.label}, ${plan.columns} across and ${plan.rows} down.`,
  );
  const size = 9 * POINT;
  const steps = [
    'Print at 100 % (“actual size”), never “fit to page”. Lay a rule on both check bars of a printed page: if they are not 100 mm and 4 in long, do not use it.',
    `Neighbouring pages cover the same ${OVERLAP} mm. Cut one of two neighbours along its dashed join line, lay it on the other’s join line so that the crosses meet, and tape.`,
    'When all is taped, check straight lines with a straightedge, and the distances between far edges against the cut card.',
    'Crossed-out cells carry nothing to cut or drill and are not printed.',
  ];
  steps.forEach((step, number) => {
    wrapText(step, content.right - content.left - 5, size, pack.measure).forEach((text, i) => {
      y -= 1.35 * size;
      if (i === 0) pen.text(`${number + 1}`, [content.left, y], { size, bold: true });
      pen.text(text, [content.left + 5, y], { size });
    });
    y -= 0.4 * size;
  });
  drawCheckBars(pen, [content.left, content.bottom + 2]);
  drawMap(leaf, pack.measure, full, plan, {
    left: content.left,
    right: content.right,
    bottom: content.bottom + 20,
    top: y - 5,
  });
  return leaf;
}

function drawMap(
  { pen, number }: Leaf,
  measure: MeasureText,
  full: FullSize,
  { tiles, columns, rows }: TilePlan,
  room: Rectangle,
): void {
  const [first, last] = [tiles[0]!.ground, tiles.at(-1)!.ground];
  const scale = Math.min(
    (room.right - room.left) / (last.right - first.left),
    (room.top - room.bottom) / (first.top - last.bottom),
  );
  const x0 = (room.left + room.right) / 2 - (scale * (first.left + last.right)) / 2;
  const y0 = (room.bottom + room.top) / 2 - (scale * (first.top + last.bottom)) / 2;
  const frame = corners({
    left: x0 + scale * first.left,
    right: x0 + scale * last.right,
    bottom: y0 + scale * last.bottom,
    top: y0 + scale * first.top,
  });
  pen.clipped(frame, () => drawShapes(pen, placeShapes(full.mapShapes, scale, [x0, y0])));
  let page = number;
  for (const { id, column, row, ground, printed } of tiles) {
    const left = column === 0 ? ground.left : ground.left + OVERLAP / 2;
    const right = column === columns - 1 ? ground.right : ground.right - OVERLAP / 2;
    const top = row === 0 ? ground.top : ground.top - OVERLAP / 2;
    const bottom = row === rows - 1 ? ground.bottom : ground.bottom + OVERLAP / 2;
    const cell = {
      left: x0 + scale * left,
      right: x0 + scale * right,
      bottom: y0 + scale * bottom,
      top: y0 + scale * top,
    };
    pen.box(cell, { width: 0.15, gray: 0.4 });
    if (!printed) {
      pen.line([cell.left, cell.bottom], [cell.right, cell.top], { width: 0.12, gray: 0.6 });
      pen.line([cell.left, cell.top], [cell.right, cell.bottom], { width: 0.12, gray: 0.6 });
      continue;
    }
    page += 1;
    const size = Math.min(9 * POINT, (cell.right - cell.left) / 5);
    const at: Point = [(cell.left + cell.right) / 2, (cell.top + cell.bottom) / 2];
    const pageWords = `page ${page}`;
    const half = Math.max(measure(id, 1.3 * size, true), measure(pageWords, 0.8 * size, false)) / 2 + 0.4;
    pen.filled(
      corners({ left: at[0] - half, right: at[0] + half, bottom: at[1] - 1.5 * size, top: at[1] + 1.2 * size }),
      1,
    );
    pen.text(id, [at[0], at[1] + 0.1 * size], { size: 1.3 * size, bold: true, align: 'middle' });
    pen.text(pageWords, [at[0], at[1] - 1.2 * size], { size: 0.8 * size, align: 'middle' });
  }
}
