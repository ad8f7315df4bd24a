import type { Matrix } from 'ml-matrix';
import type { AlcoveModel, Part } from '../alcove';
import { eachCellEquation } from './cellEquations';
import type { WeightedScan } from './condensedRows';
import type { ScanUnknown } from './scanInUse';

/** How the cells of one surface of a scan fit the adjusted alcove. */
export interface ScanSurfaceReport {
  surface: Part;
  cells: number;
  /** root mean square of the cells' residuals, mm: what is left after the surface's shape */
  rms: number;
  /** what the cells' standard deviations were multiplied by, as estimated */
  factor: number;
  /** the cell that stands off farthest for its standard deviation: place (mm), adjusted less measured (mm), and that over
   * its standard deviation */
  worst: { at: number; height: number; residual: number; w: number };
}

/** What the adjustment found about one scan. */
export interface ScanReport {
  id: string;
  /** what the scan did not know of itself, in mm, radians, and for the scale a ratio less 1 */
  unknowns: { name: ScanUnknown; value: number; sd: number }[];
  surfaces: ScanSurfaceReport[];
}

/** One report for each scan in use: a scan's thousands of cells come to a line for each of its surfaces. */
export function scanReports(
  model: AlcoveModel,
  scans: readonly WeightedScan[],
  firsts: readonly number[],
  values: Float64Array,
  covariance: Matrix,
): ScanReport[] {
  return scans.map((scan, s) => {
    const surfaces = new Map<Part, ScanSurfaceReport & { squares: number }>();
    eachCellEquation(model, scan, firsts[s]!, values, ({ part, misfit, sd, a, b }) => {
      const factor = scan.factor[part] ?? 1;
      const w = Math.abs(misfit) / (sd * factor);
      const report = surfaces.get(part) ?? {
        surface: part,
        cells: 0,
        rms: 0,
        factor,
        worst: { at: a, height: b, residual: -misfit, w: -1 },
        squares: 0,
      };
      report.cells++;
      report.squares += misfit * misfit;
      if (w > report.worst.w) report.worst = { at: a, height: b, residual: -misfit, w };
      surfaces.set(part, report);
    });
    return {
      id: scan.scan.id,
      unknowns: scan.unknowns.map((name, k) => {
        const j = firsts[s]! + k;
        return { name, value: values[j]!, sd: Math.sqrt(Math.max(0, covariance.get(j, j))) };
      }),
      surfaces: [...surfaces.values()].map(({ squares, ...report }) => ({
        ...report,
        rms: Math.sqrt(squares / report.cells),
      })),
    };
  });
}
