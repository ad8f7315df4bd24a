import type { AlcoveModel } from '../alcove';
import type { LeastSquaresProblem } from '../least-squares';
import type { CondensedRows } from '../scanned';
import type { Observation } from '../survey';

/** What a row of the adjustment says. */
export type Row =
  | { observation: number }
  /** a prior, or a placeholder for a size that nothing measures */
  | { parameter: number; placeholder: boolean }
  /** one of the rows that stand for the cells of all scans */
  | { condensed: number };

export interface AlcoveProblem extends LeastSquaresProblem {
  /** observations in use first, in order, then priors and placeholders, then what stands for scans */
  rows: Row[];
}

/** A parameter held near a value. */
export interface Hold {
  parameter: number;
  mean: number;
  sd: number;
  placeholder: boolean;
}

/**
 * Rows and unknowns of the adjustment, whitened. Unknowns: the model's parameters, then one standoff per plumb reading
 * in use.
 * @param used observations in use, with their index among all
 * @param scanned what stands for the cells of scans
 * @param from values to start from; each parameter's own start unless given
 */
export function alcoveProblem(
  model: AlcoveModel,
  used: readonly { index: number; observation: Observation }[],
  holds: readonly Hold[],
  scanned: CondensedRows | null = null,
  from: ArrayLike<number> | null = null,
): AlcoveProblem {
  const p = model.parameters.length;
  const columns = standoffColumns(used, p);
  const n = p + new Set(columns.filter((column) => column !== null)).size;
  const start = new Float64Array(n);
  model.parameters.forEach((parameter, j) => {
    start[j] = from?.[j] ?? parameter.start;
  });
  const cellRows = (scanned?.rows ?? []).map((row) => {
    const padded = new Float64Array(n);
    padded.set(row);
    return padded;
  });

  return {
    start,
    rows: [
      ...used.map(({ index }) => ({ observation: index })),
      ...holds.map(({ parameter, placeholder }) => ({ parameter, placeholder })),
      ...cellRows.map((_, condensed) => ({ condensed })),
    ],
    evaluate(x) {
      const alcove = model.build(x.subarray(0, p));
      const direct = used.length + holds.length;
      const misfit = new Float64Array(direct + cellRows.length);
      const jacobian = Array.from({ length: direct }, () => new Float64Array(n));
      for (let i = 0; i < used.length; i++) {
        const { observed, sd, predict } = used[i]!.observation;
        const { value, gradient } = predict(alcove);
        const column = columns[i]!;
        const row = jacobian[i]!;
        misfit[i] = (observed - value - (column === null ? 0 : x[column]!)) / sd;
        if (gradient !== null) for (let j = 0; j < p; j++) row[j] = gradient[j]! / sd;
        if (column !== null) row[column] = 1 / sd;
      }
      holds.forEach(({ parameter, sd, mean }, k) => {
        misfit[used.length + k] = (mean - x[parameter]!) / sd;
        jacobian[used.length + k]![parameter] = 1 / sd;
      });
      cellRows.forEach((row, k) => {
        let left = scanned!.target[k]!;
        for (let j = 0; j < p; j++) left -= row[j]! * (x[j]! - scanned!.at[j]!);
        misfit[direct + k] = left;
        jacobian.push(row);
      });
      return { misfit, jacobian };
    },
  };
}

/** Per observation the column of its plumb reading's standoff; null for the other kinds. */
function standoffColumns(used: readonly { observation: Observation }[], first: number): (number | null)[] {
  const columnOf = new Map<number, number>();
  return used.map(({ observation: { standoff, reading } }) => {
    if (!standoff) return null;
    if (!columnOf.has(reading)) columnOf.set(reading, first + columnOf.size);
    return columnOf.get(reading)!;
  });
}
