import type { Highs } from 'highs';
import type { LinearModel, LinearSolution, SolveLinear } from '../core';

export interface SolverLimits {
  /** seconds for one model */
  seconds: number;
}

/** Solves the core's linear models with HiGHS, loaded when first needed, and anew where that failed. */
export function highsSolver(load: () => Promise<Highs>, { seconds }: SolverLimits = { seconds: 20 }): SolveLinear {
  let loading: Promise<Highs> | null = null;
  return async (model) => {
    loading ??= load().catch((error) => {
      loading = null;
      throw error;
    });
    return solveWith(await loading, model, seconds);
  };
}

function solveWith(highs: Highs, { columns, rows }: LinearModel, seconds: number): LinearSolution {
  const starts = new Int32Array(columns.length + 1);
  columns.forEach(({ entries }, j) => {
    starts[j + 1] = starts[j]! + entries.length;
  });
  const indices = new Int32Array(starts[columns.length]!);
  const values = new Float64Array(starts[columns.length]!);
  columns.forEach(({ entries }, j) => {
    entries.forEach(([row, value], k) => {
      indices[starts[j]! + k] = row;
      values[starts[j]! + k] = value;
    });
  });
  const finite = (bound: number): number => (Number.isFinite(bound) ? bound : Math.sign(bound) * highs.infinity);
  const { variableType, modelStatus } = highs.constants;
  return highs.withModel(
    {
      numCols: columns.length,
      numRows: rows.length,
      colCost: columns.map(({ cost }) => cost),
      colLower: columns.map(() => 0),
      colUpper: columns.map(({ most }) => finite(most ?? Number.POSITIVE_INFINITY)),
      rowLower: rows.map(({ low }) => finite(low)),
      rowUpper: rows.map(({ high }) => finite(high)),
      matrix: { format: 'csc', numCols: columns.length, numRows: rows.length, starts, indices, values },
      ...(columns.some(({ integer }) => integer)
        ? { integrality: columns.map(({ integer }) => (integer ? variableType.integer : variableType.continuous)) }
        : {}),
    },
    (instance): LinearSolution => {
      instance.options.set({ output_flag: false, time_limit: seconds, mip_rel_gap: 0, mip_abs_gap: 1e-6 });
      instance.run();
      const status = instance.getModelStatus();
      if (status === modelStatus.infeasible) return { status: 'infeasible', objective: 0, values: [], prices: [] };
      const objective = instance.getObjectiveValue();
      const { colValue, rowDual } = instance.getSolution();
      const known = Number.isFinite(objective) && Math.abs(objective) < highs.infinity;
      return {
        status: status === modelStatus.optimal ? 'optimal' : 'stopped',
        objective,
        values: known ? [...colValue] : [],
        prices: [...rowDual],
      };
    },
  );
}
