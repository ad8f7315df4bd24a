import { concatTransformationMatrix, drawObject, type PDFRef, popGraphicsState, pushGraphicsState } from 'pdf-lib';
import type { Point } from '../../core';
import { corners, placeShapes, type Rectangle } from '../drawing';
import { drawCheckBars } from './checkBars';
import { drawShapes } from './drawShapes';
import type { FullSize } from './fullSize';
import { fitted, type Leaf, MARGIN, type Pack } from './pack';
import { POINT } from './paper';
import type { Pen } from './pen';
import { OVERLAP, STRIP, type Tile, type TilePlan, tileSize } from './tilePlan';

/** A template at exactly 1:1 over as many pages as carry something to cut, drill or align. */
export function tilePages(pack: Pack, full: FullSize, plan: TilePlan): Leaf[] {
  const stamp = pack.addStamp(full.reach, (pen) => drawShapes(pen, full.shapes));
  return plan.tiles.filter(({ printed }) => printed).map((tile) => tilePage(pack, full, plan, tile, stamp));
}

function tilePage(pack: Pack, full: FullSize, plan: TilePlan, tile: Tile, stamp: PDFRef): Leaf {
  const leaf = pack.addLeaf(plan.paper);
  const { pen, page } = leaf;
  const { width, height } = tileSize(plan.paper);
  const frame: Rectangle = {
    left: MARGIN,
    right: MARGIN + width,
    bottom: MARGIN + STRIP,
    top: MARGIN + STRIP + height,
  };
  const shift: Point = [frame.left - tile.ground.left, frame.bottom - tile.ground.bottom];
  const name = page.node.newXObject('Template', stamp);
  pen.clipped(corners(frame), () => {
    pen.push(
      pushGraphicsState(),
      concatTransformationMatrix(1, 0, 0, 1, shift[0], shift[1]),
      drawObject(name),
      popGraphicsState(),
    );
  });
  drawShapes(pen, placeShapes(full.labels(tile.ground, pack.measure), 1, shift));
  drawJoins(pen, tile, plan, frame);
  drawStrip(pack, leaf, full, tile);
  return leaf;
}

/** Dashed join lines half-way through each overlap, the neighbour's name on them, and register crosses. */
function drawJoins(pen: Pen, tile: Tile, { columns, rows, tiles }: TilePlan, frame: Rectangle): void {
  pen.box(frame, { width: 0.1, gray: 0.65 });
  const neighbour = (dc: number, dr: number) =>
    tiles.find(({ column, row }) => column === tile.column + dc && row === tile.row + dr);
  const half = OVERLAP / 2;
  const join = { width: 0.15, gray: 0.35, dash: [1.5, 1.5] };
  const size = 7 * POINT;
  const [midX, midY] = [(frame.left + frame.right) / 2, (frame.bottom + frame.top) / 2];
  const xs = [tile.column > 0 ? frame.left + half : null, tile.column < columns - 1 ? frame.right - half : null];
  const ys = [tile.row < rows - 1 ? frame.bottom + half : null, tile.row > 0 ? frame.top - half : null];
  xs.forEach((x, i) => {
    const other = neighbour(i === 0 ? -1 : 1, 0);
    if (x === null || !other?.printed) return;
    pen.line([x, frame.bottom], [x, frame.top], join);
    pen.text(`joins ${other.id}`, [i === 0 ? x - 1 : x + 3, midY + 14], {
      size,
      angle: 90,
      align: 'middle',
      gray: 0.2,
    });
    cross(pen, [x, midY]);
  });
  ys.forEach((y, i) => {
    const other = neighbour(0, i === 0 ? 1 : -1);
    if (y === null || !other?.printed) return;
    pen.line([frame.left, y], [frame.right, y], join);
    pen.text(`joins ${other.id}`, [midX + 14, i === 0 ? y - 3 : y + 1], { size, align: 'middle', gray: 0.2 });
    cross(pen, [midX, y]);
  });
  const joined = (dc: number, dr: number) => neighbour(dc, dr)?.printed;
  for (const dc of [-1, 1]) {
    for (const dr of [-1, 1]) {
      const x = xs[dc < 0 ? 0 : 1];
      const y = ys[dr > 0 ? 0 : 1];
      if (x != null && y != null && (joined(dc, 0) || joined(0, dr))) cross(pen, [x, y]);
    }
  }
}

function cross(pen: Pen, [x, y]: Point): void {
  pen.line([x - 4, y], [x + 4, y], { width: 0.2 });
  pen.line([x, y - 4], [x, y + 4], { width: 0.2 });
  pen.circle([x, y], 2, { width: 0.2 });
}

function drawStrip(pack: Pack, { pen, paper }: Leaf, full: FullSize, tile: Tile): void {
  const x = MARGIN + 118;
  const width = paper.width - MARGIN - x;
  const size = 8 * POINT;
  const y = MARGIN + 7;
  drawCheckBars(pen, [MARGIN, y]);
  pen.text(tile.id, [paper.width - MARGIN, y + 4.5], { size: 20 * POINT, bold: true, align: 'end' });
  pen.text(fitted(full.title, width - 20, size, pack.measure), [x, y + 8], { size, bold: true });
  pen.text(full.statement.split(':')[0]!, [x, y + 4], { size, bold: true });
  pen.text('1:1 – print at 100 %, check both bars', [x, y], { size });
}
