import type { Point } from '../../core';
import { around, clipStroke, corners, grown, type Rectangle } from '../drawing';
import { MARGIN } from './pack';
import type { Paper } from './paper';

/** Height of the strip under a tile for check bars and words, mm. */
export const STRIP = 20;
/** How far neighbouring tiles cover the same ground, mm. */
export const OVERLAP = 12;
/** Clear ground round the outline, mm. */
const BORDER = 6;
/** Positions of the grid tried across and down. */
const TRIES = 7;
/** Pages that one would rather print than have a hole lie across a join. */
const SPLIT_HOLE = 2;

export interface Tile {
  /** column letter and row number: `B3` is second from the left, third from the top */
  id: string;
  column: number;
  row: number;
  /** ground that the tile shows, drawing coordinates, mm */
  ground: Rectangle;
  /** false where there is nothing on it to cut, drill or align */
  printed: boolean;
}

/** What tiles must show: an outline, holes that are better not split, and control lines. */
export interface Tiled {
  outline: Point[];
  holes: { centre: Point; diameter: { mm: number } }[];
  levelLine?: { line: [Point, Point] };
  plumbDatum?: { line: [Point, Point] };
}

export interface TilePlan {
  paper: Paper;
  columns: number;
  rows: number;
  tiles: Tile[];
}

/** Ground of one tile at 1:1 on a paper, mm. */
export function tileSize(paper: Paper): { width: number; height: number } {
  return { width: paper.width - 2 * MARGIN, height: paper.height - 2 * MARGIN - STRIP };
}

/**
 * Covers a template with tiles at 1:1: the paper upright or lying and the grid where the fewest pages are printed and the
 * fewest holes lie across a join.
 */
export function tilePlan(drawing: Tiled, paper: Paper): TilePlan {
  const sheets = paper.roll
    ? [{ ...paper, height: lengthOnRoll(drawing) }]
    : [paper, { ...paper, width: paper.height, height: paper.width }];
  const plans = sheets.flatMap((sheet) => plansOn(drawing, sheet));
  const cost = (plan: TilePlan) => printedCount(plan) + SPLIT_HOLE * splitHoles(drawing, plan);
  return plans.reduce((best, plan) => (cost(plan) < cost(best) ? plan : best));
}

/** Length off a roll on which a template's whole height fits, mm. */
function lengthOnRoll({ outline }: Tiled): number {
  const { bottom, top } = around(outline);
  return Math.ceil(top - bottom + 2 * BORDER + 2 * MARGIN + STRIP);
}

/** Holes that lie whole on no tile. */
function splitHoles({ holes }: Tiled, { tiles }: TilePlan): number {
  const whole = ({ centre: [x, y], diameter: { mm } }: Tiled['holes'][number]) =>
    tiles.some(
      ({ ground: { left, right, bottom, top } }) =>
        x - mm / 2 >= left && x + mm / 2 <= right && y - mm / 2 >= bottom && y + mm / 2 <= top,
    );
  return holes.filter((hole) => !whole(hole)).length;
}

export const printedCount = ({ tiles }: TilePlan): number => tiles.filter(({ printed }) => printed).length;

function plansOn(drawing: Tiled, paper: Paper): TilePlan[] {
  const { width, height } = tileSize(paper);
  const area = grown(around(drawing.outline), BORDER);
  const columns = count(area.right - area.left, width);
  const rows = count(area.top - area.bottom, height);
  const spare = {
    x: covered(columns, width) - (area.right - area.left),
    y: covered(rows, height) - (area.top - area.bottom),
  };
  const strokes = strokesToShow(drawing);
  // The middle comes first, so that an even border wins among equals.
  const shares = Array.from({ length: TRIES }, (_, i) => 0.5 + (i % 2 ? 1 : -1) * (Math.ceil(i / 2) / (TRIES - 1)));
  return shares.flatMap((across) =>
    shares.map((down): TilePlan => {
      const [left, top] = [area.left - across * spare.x, area.top + down * spare.y];
      const tiles = Array.from({ length: rows * columns }, (_, i): Tile => {
        const [row, column] = [Math.floor(i / columns), i % columns];
        const [x, y] = [left + column * (width - OVERLAP), top - row * (height - OVERLAP)];
        const ground = { left: x, right: x + width, bottom: y - height, top: y };
        return {
          id: `${columnLetters(column)}${row + 1}`,
          column,
          row,
          ground,
          printed: strokes.some(([a, b]) => clipStroke(a, b, ground) !== null),
        };
      });
      return { paper, columns, rows, tiles };
    }),
  );
}

const count = (length: number, tile: number): number => Math.max(1, Math.ceil((length - OVERLAP) / (tile - OVERLAP)));
const covered = (tiles: number, tile: number): number => tiles * (tile - OVERLAP) + OVERLAP;

/** 0 → A, 25 → Z, 26 → AA. */
export function columnLetters(column: number): string {
  return column < 26
    ? String.fromCharCode(65 + column)
    : columnLetters(Math.floor(column / 26) - 1) + columnLetters(column % 26);
}

/** Cut edges, control lines and the squares round holes. */
function strokesToShow({ outline, holes, levelLine, plumbDatum }: Tiled): [Point, Point][] {
  const closed = (points: Point[]) =>
    points.map((point, i): [Point, Point] => [point, points[(i + 1) % points.length]!]);
  const square = ({ centre: [x, y], diameter: { mm } }: Tiled['holes'][number]) =>
    closed(corners({ left: x - mm / 2, right: x + mm / 2, bottom: y - mm / 2, top: y + mm / 2 }));
  return [
    ...closed(outline),
    ...[levelLine, plumbDatum].flatMap((control) => (control ? [control.line] : [])),
    ...holes.flatMap(square),
  ];
}
