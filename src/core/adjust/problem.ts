import type { AlcoveModel } from '../alcove';
import type { LeastSquaresProblem } from '../least-squares';
import type { Observation } from '../survey';

/** What a row of the adjustment says. */
export type Row =
  | { observation: number }
  /** a prior, or a placeholder for a size that nothing measures */
  | { parameter: number; placeholder: boolean };

export interface AlcoveProblem extends LeastSquaresProblem {
  /** observations in use first, in order, then priors and placeholders */
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
 */
export function alcoveProblem(
  model: AlcoveModel,
  used: readonly { index: number; observation: Observation }[],
  holds: readonly Hold[],
): AlcoveProblem {
  const p = model.parameters.length;
  const columns = standoffColumns(used, p);
  const n = p + new Set(columns.filter((column) => column !== null)).size;
  const start = new Float64Array(n);
  model.parameters.forEach((parameter, j) => {
    start[j] = parameter.start;
  });

  return {
    start,
    rows: [
      ...used.map(({ index }) => ({ observation: index })),
      ...holds.map(({ parameter, placeholder }) => ({ parameter, placeholder })),
    ],
    evaluate(x) {
      const alcove = model.build(x.subarray(0, p));
      const misfit = new Float64Array(used.length + holds.length);
      const jacobian = Array.from(misfit, () => new Float64Array(n));
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
