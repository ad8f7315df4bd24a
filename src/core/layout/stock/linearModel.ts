/** A column of a linear model: its cost, its entries by row, and whether it must be whole. Never negative. */
export interface Column {
  cost: number;
  entries: readonly (readonly [row: number, value: number])[];
  integer: boolean;
  /** no more than this; without it no limit */
  most?: number;
}

/** Minimise Σ cost · x subject to low ≤ row ≤ high and x ≥ 0. */
export interface LinearModel {
  columns: readonly Column[];
  rows: readonly { low: number; high: number }[];
}

export interface LinearSolution {
  /** `stopped`: a limit of time was reached; `values` are then the best found, if any */
  status: 'optimal' | 'infeasible' | 'stopped';
  objective: number;
  values: readonly number[];
  /** shadow price of each row; of a model with whole columns without meaning */
  prices: readonly number[];
}

/** Solves a model. The solver itself (WASM, loaded on demand) lives outside the core. */
export type SolveLinear = (model: LinearModel) => Promise<LinearSolution>;
