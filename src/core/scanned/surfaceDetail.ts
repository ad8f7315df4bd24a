import { type AlcoveModel, towardsRoom } from '../alcove';
import type { ScanSurface } from '../job-file';
import { eachCellEquation } from './cellEquations';
import type { WeightedScan } from './condensedRows';

/**
 * What is left of a surface's cells after its shape, as means over square blocks of an even grid in the job's frame,
 * row after row; null where the scan saw nothing.
 */
export interface ResidualMap {
  /** middle of the first block: station along the wall and height; on the rim x and z, mm */
  from: [number, number];
  /** side of a block, mm */
  size: number;
  columns: number;
  /** how far the scan has the surface towards the room (on the rim: up) of where it was worked out to be, mm */
  value: (number | null)[];
  /** standard deviation of each, mm */
  sd: (number | null)[];
}

/** Cells of one surface where they lie in the job's frame. */
export interface PlacedCells {
  /** side of a cell, mm */
  size: number;
  /** two numbers for each cell: its place on the surface, mm */
  places: Float64Array;
  residuals: ResidualMap;
}

/** Side of a block of a residual map, mm: several cells lie in it, so that their noise averages out. */
const BLOCK = 100;

/** Where the cells of each surface of a scan lie in the adjusted alcove, and what is left of them there. */
export function placedCells(
  model: AlcoveModel,
  scan: WeightedScan,
  first: number,
  values: Float64Array,
): Map<ScanSurface, PlacedCells> {
  const lists = new Map<ScanSurface, number[]>();
  eachCellEquation(model, scan, first, values, ({ part, misfit, sd, a, b }) => {
    if (part === 'front.left' || part === 'front.right') return;
    const list = lists.get(part) ?? [];
    lists.set(part, list);
    list.push(a, b, towardsRoom(part) * misfit, sd * (scan.factor[part] ?? 1));
  });
  return new Map(
    [...lists].map(([part, list]) => [
      part,
      {
        size: scan.scan.surfaces[part]!.size,
        places: Float64Array.from(list.filter((_, i) => i % 4 < 2)),
        residuals: residualMap(list),
      },
    ]),
  );
}

/** @param list place, height, residual and standard deviation of one cell after the other */
function residualMap(list: readonly number[]): ResidualMap {
  const of = (k: number): number[] => list.filter((_, i) => i % 4 === k);
  const index = (value: number): number => Math.floor(value / BLOCK);
  const [as, bs] = [of(0).map(index), of(1).map(index)];
  const [column0, row0] = [smallest(as), smallest(bs)];
  const columns = -smallest(as.map((a) => -a)) - column0 + 1;
  const rows = -smallest(bs.map((b) => -b)) - row0 + 1;
  const sums = Array.from({ length: columns * rows }, () => ({ weight: 0, sum: 0 }));
  for (let i = 0; i < as.length; i++) {
    const block = sums[(bs[i]! - row0) * columns + as[i]! - column0]!;
    const weight = 1 / list[4 * i + 3]! ** 2;
    block.weight += weight;
    block.sum += weight * list[4 * i + 2]!;
  }
  return {
    from: [(column0 + 0.5) * BLOCK, (row0 + 0.5) * BLOCK],
    size: BLOCK,
    columns,
    value: sums.map(({ weight, sum }) => (weight === 0 ? null : rounded(sum / weight))),
    sd: sums.map(({ weight }) => (weight === 0 ? null : rounded(1 / Math.sqrt(weight)))),
  };
}

const smallest = (values: readonly number[]): number => values.reduce((least, each) => Math.min(least, each), Infinity);
const rounded = (value: number): number => Number(value.toFixed(3));

/** Of these places, those on a cell or within `reach` of its middle, as a share. */
export function shareSeen(
  { size, places }: PlacedCells,
  wanted: readonly (readonly [number, number])[],
  reach = 0.51 * size,
): number {
  // Cells by the square of the grid that their middle lies in; a place looks at its own square and those around it.
  const side = Math.max(size, reach);
  const key = (a: number, b: number): string => `${Math.floor(a / side)} ${Math.floor(b / side)}`;
  const squares = new Map<string, number[]>();
  for (let i = 0; i < places.length; i += 2) {
    const at = key(places[i]!, places[i + 1]!);
    const square = squares.get(at);
    if (square === undefined) squares.set(at, [i]);
    else square.push(i);
  }
  const near = (a: number, b: number): boolean =>
    [-1, 0, 1].some((across) =>
      [-1, 0, 1].some((up) =>
        (squares.get(key(a + across * side, b + up * side)) ?? []).some(
          (i) => Math.abs(places[i]! - a) <= reach && Math.abs(places[i + 1]! - b) <= reach,
        ),
      ),
    );
  return wanted.length === 0 ? 0 : wanted.filter(([a, b]) => near(a, b)).length / wanted.length;
}
