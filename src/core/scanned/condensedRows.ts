import type { AlcoveModel, Part, Unevenness } from '../alcove';
import { whitenedRows } from '../least-squares';
import { eachCellEquation } from './cellEquations';
import type { ScanInUse } from './scanInUse';

/** Normal equations of all cells of all scans near some values: normal (x − at) = right. */
export interface CellNormals {
  at: Float64Array;
  /** n × n, row after row, of whatever rank */
  normal: Float64Array;
  right: Float64Array;
}

/** Rows that stand for all those cells: R (x − at) = target, whitened. */
export interface CondensedRows {
  at: Float64Array;
  rows: Float64Array[];
  target: Float64Array;
}

/** A scan with the factors that its cells' own standard deviations took, by surface. */
export interface WeightedScan extends ScanInUse {
  factor: Partial<Record<Part, number>>;
}

/** Cells farther off than this many standard deviations count for less (Huber 1964). */
const HUBER = 3;

/**
 * The normal equations of all cells at the given values, splines' priors included: as large as there are parameters,
 * whatever the number of cells.
 * @param firsts index of each scan's first unknown
 * @param robust whether cells far off count for less, as judged at these values
 */
export function cellNormals(
  model: AlcoveModel,
  scans: readonly WeightedScan[],
  firsts: readonly number[],
  uneven: readonly Unevenness[],
  values: Float64Array,
  robust: boolean,
): CellNormals {
  const n = values.length;
  const normal = new Float64Array(n * n);
  const right = new Float64Array(n);
  scans.forEach((scan, s) => {
    eachCellEquation(model, scan, firsts[s]!, values, ({ part, misfit, sd }, row) => {
      const used = sd * (scan.factor[part] ?? 1);
      const off = Math.abs(misfit) / used;
      const weight = (robust && off > HUBER ? HUBER / off : 1) / (used * used);
      for (let p = 0; p < row.length; p++) {
        const line = row.index[p]! * n;
        const weighted = weight * row.value[p]!;
        right[row.index[p]!]! += weighted * misfit;
        for (let q = 0; q <= p; q++) normal[line + row.index[q]!]! += weighted * row.value[q]!;
      }
    });
  });
  mirrorLower(normal, n);
  for (const { wall, scanned } of uneven) {
    if (scanned !== true) continue;
    const { basis, offset } = model.pieces[wall][1]!;
    for (let j = offset; j < offset + basis.count; j++) {
      const weight = 1 / model.parameters[j]!.priorSd! ** 2;
      normal[j * n + j]! += weight;
      right[j]! -= weight * values[j]!;
    }
  }
  return { at: values, normal, right };
}

/** Rows list their unknowns in rising order, so that only the lower triangle was summed. */
function mirrorLower(matrix: Float64Array, n: number): void {
  for (let i = 0; i < n; i++) for (let j = 0; j < i; j++) matrix[j * n + i] = matrix[i * n + j]!;
}

/** The same as rows of an adjustment, as many as there are parameters, with the same solution and covariance. */
export function condensedRows({ at, normal, right }: CellNormals): CondensedRows {
  return { at, ...whitenedRows(normal, right, at.length) };
}
