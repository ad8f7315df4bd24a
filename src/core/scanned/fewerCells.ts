import type { ScanSurface } from '../job-file';
import { evenlyAmong } from '../range';
import type { Cells, ScanInUse } from './scanInUse';

/** So many cells of a surface say where the scan lies, and the surface in it, to a millimetre. */
const ENOUGH = 300;

/** A scan with some of each surface's cells, evenly through them, where millimetres do. */
export function fewerCells<Given extends ScanInUse>(scan: Given, enough = ENOUGH): Given {
  const cells = Object.entries(scan.cells) as [ScanSurface, Cells][];
  return { ...scan, cells: Object.fromEntries(cells.map(([name, each]) => [name, some(each, enough)])) };
}

function some(cells: Cells, enough: number): Cells {
  const count = cells.a.length;
  if (count <= enough) return cells;
  const kept = evenlyAmong(count, enough);
  const of = (values: Float64Array): Float64Array => Float64Array.from(kept, (i) => values[i]!);
  return { a: of(cells.a), b: of(cells.b), value: of(cells.value), sd: of(cells.sd) };
}
