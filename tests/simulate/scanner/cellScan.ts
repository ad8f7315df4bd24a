import type { Scan, ScanGrid, ScanSurface } from '../../../src/core/job-file';
import { randomFrom } from '../random';
import { frontAt, rimAt, type TrueAlcove, wallAt } from '../trueAlcove';

export interface CellScanOrder {
  id?: string;
  /** standard deviation of each cell, mm; it is also what the cells state */
  sd?: number;
  /** what the errors drawn are more than that */
  times?: number;
  seed?: number;
  /** side of a cell, mm */
  size?: number;
  /** true length over the scan's, less 1 */
  scale?: number;
  /** where the scan's origin truly lies, mm */
  across?: number;
  up?: number;
  surfaces?: ScanSurface[];
}

/** A scan as cells straight from the truth, without points: each cell's value with a normal error. */
export function cellScan(
  alcove: TrueAlcove,
  {
    id = 'scan',
    sd = 0.3,
    times = 1,
    seed = 1,
    size = 100,
    scale = 0,
    across = 0,
    up = 0,
    surfaces,
  }: CellScanOrder = {},
): Scan {
  const random = randomFrom(seed);
  const shift = { x: across, y: up, z: 0 };
  const grid = (
    [a0, a1]: [number, number],
    [b0, b1]: [number, number],
    [along, upwards, off]: [keyof typeof shift, keyof typeof shift, keyof typeof shift],
    field: (a: number, b: number) => number,
  ): ScanGrid => {
    const columns = Math.floor((a1 - a0) / size) + 1;
    const rows = Math.floor((b1 - b0) / size) + 1;
    const value = Array.from({ length: columns * rows }, (_, k) => {
      const a = (1 + scale) * (a0 + (k % columns) * size) + shift[along];
      const b = (1 + scale) * (b0 + Math.floor(k / columns) * size) + shift[upwards];
      return (field(a, b) - shift[off]) / (1 + scale) + random.normal(0, times * sd);
    });
    return { from: [a0, b0], size, columns, value, sd: value.map(() => sd) };
  };
  const height: [number, number] = [-650 - up, 1050 - up];
  const half = 700;
  const all: Record<ScanSurface, () => ScanGrid> = {
    back: () => grid([-half, half], height, ['x', 'y', 'z'], (x, y) => wallAt(alcove, 'back', x, y)),
    left: () => grid([50, 700], height, ['z', 'y', 'x'], (z, y) => wallAt(alcove, 'left', z, y)),
    right: () => grid([50, 700], height, ['z', 'y', 'x'], (z, y) => wallAt(alcove, 'right', z, y)),
    rim: () => grid([-half, half], [30, 730], ['x', 'z', 'y'], (x, z) => rimAt(alcove, x, z)),
  };
  const edge = (side: 'left' | 'right'): Scan['front']['left'] =>
    [-600, -300, 0, 300, 600, 900].map((y) => {
      const truly = (1 + scale) * (y - up) + up;
      return { height: y - up, value: frontAt(alcove, side, truly) / (1 + scale) + random.normal(0, times * sd), sd };
    });
  const shown = surfaces ?? (Object.keys(all) as ScanSurface[]);
  return {
    id,
    kind: 'scan',
    points: 0,
    scaleSd: 2,
    tiltSd: 5,
    biasSd: 0.5,
    surfaces: Object.fromEntries(shown.map((name) => [name, all[name]()])),
    front: { left: edge('left'), right: edge('right') },
  };
}
