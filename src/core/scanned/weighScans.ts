import type { Unevenness } from '../alcove';
import type { WallName } from '../job-file';
import type { WeightedScan } from './condensedRows';
import type { Cells, ScanInUse } from './scanInUse';
import { plainFactor, smoothingOf } from './smoothing';

/** A stretch of a wall, mm. */
type Stretch = Pick<Unevenness, 'at' | 'height'>;

const WALLS: readonly WallName[] = ['back', 'left', 'right'];
const LEAST_STRETCH = 300;

/**
 * What the cells themselves say of how noisy they are and how wavy each wall is. Where several scans show a wall, the one
 * with most cells on it says how wavy.
 * @param shiftOf how far a scan's frame lies from the job's, mm
 * @param panelled stretch of each wall that panels cover
 */
export function weighScans(
  scans: readonly ScanInUse[],
  shiftOf: (scan: number) => { across: number; up: number; out: number },
  panelled: (wall: WallName) => Stretch,
): { scans: WeightedScan[]; uneven: Unevenness[] } {
  const weighted = scans.map(
    (scan): WeightedScan => ({
      ...scan,
      factor: scan.cells.rim === undefined ? {} : { rim: plainFactor(scan.cells.rim) },
    }),
  );
  const uneven: Unevenness[] = [];
  for (const wall of WALLS) {
    let most = 0;
    let call: Unevenness | null = null;
    weighted.forEach((scan, s) => {
      const cells = scan.cells[wall];
      if (cells === undefined) return;
      const stretch = covering(cells, panelled(wall), shiftOf(s), wall);
      const { spline, factor } = smoothingOf(cells, wall, stretch.at, stretch.height);
      scan.factor[wall] = factor;
      if (cells.a.length <= most) return;
      most = cells.a.length;
      call = spline && { wall, ...stretch, ...spline, scanned: true };
    });
    if (call !== null) uneven.push(call);
  }
  return { scans: weighted, uneven };
}

/** The stretch that panels and cells cover together, in the job's frame. */
function covering(
  { a, b }: Cells,
  { at, height }: Stretch,
  { across, up, out }: { across: number; up: number; out: number },
  wall: WallName,
): Stretch {
  const along = wall === 'back' ? across : out;
  const span = (values: Float64Array, shift: number, [from, to]: [number, number]): [number, number] => {
    const low = Math.min(from, values.reduce((x, y) => Math.min(x, y), Infinity) + shift);
    return [low, Math.max(to, low + LEAST_STRETCH, values.reduce((x, y) => Math.max(x, y), -Infinity) + shift)];
  };
  return { at: span(a, along, at), height: span(b, up, height) };
}
