import {
  type LeastSquaresOptions,
  type LeastSquaresProblem,
  type LeastSquaresSolution,
  residualsAt,
  solveLeastSquares,
  withoutRows,
} from '../least-squares';
import { type Given, given, type Residuals } from './residuals';

/** A row that the search takes to be wrong. */
export interface Blunder {
  row: number;
  /** its test statistic, the other blunders left out: w, or tau where the standard deviation of unit weight is estimated */
  statistic: number;
  /** observed less what the other rows point to, in sigmas, and that estimate's own sigma */
  error: number;
  errorSd: number;
  /** rows that explain the misfit nearly as well in its place: one reading too few to tell which */
  alternatives: number[];
}

export interface BlunderSearch {
  /** strongest first */
  blunders: Blunder[];
  /** statistic that a row had to exceed */
  critical: number;
  /** true where as many rows are taken out as a search ever takes: more may be wrong */
  exhausted: boolean;
  /** the adjustment without them, and the original row of each of its rows */
  cleaned: LeastSquaresSolution;
  kept: number[];
}

export interface SearchOptions {
  /** `w` where the sigmas are trusted (Baarda), `tau` where only their ratios are (Pope) */
  test: 'w' | 'tau';
  /** critical value for so many testable rows and degrees of freedom */
  critical(tests: number, dof: number): number;
  /** rows that may be wrong; all unless given */
  suspectable?(row: number): boolean;
  /** rows from which tau estimates the standard deviation of unit weight; all unless given */
  scaled?(row: number): boolean;
  /** most rows to take out */
  atMost?: number;
  solver?: LeastSquaresOptions;
}

/** Most rows that a search takes out: with more wrong, the survey is better started again. */
const MOST = 8;
/** One row may always be named, even where none then checks the rest: it, or its alternatives, is wrong. */
const leavingACheck = (dof: number): number => Math.min(dof, Math.max(1, dof - 1));

/**
 * A row is located where the best explanation that leaves it in is at least 50 times less likely: twice the logarithm
 * of that, in units of the sum of squares.
 */
const SEPARATE = 2 * Math.log(50);

/**
 * Iterated data snooping (Baarda 1968; Kok 1984): the row with the largest statistic beyond the critical value is taken
 * out, the rest adjusted anew, and so on; after each step every row taken out is exchanged for whichever other lowers
 * the sum of squares most, so that of two blunders the first, found while the second still distorts, can be put right;
 * at the end those that no longer fail beside the others go back in. Rows are only named here: dropping is the caller's.
 * @param first the adjustment with every row in
 */
export function searchBlunders(
  problem: LeastSquaresProblem,
  first: LeastSquaresSolution,
  options: SearchOptions,
): BlunderSearch {
  const atMost = Math.min(options.atMost ?? MOST, leavingACheck(first.dof));
  const suspectable = options.suspectable ?? (() => true);
  let state = stateOf(first, [], first, options);
  const without = (wrong: number[], x: Float64Array): State | null => {
    const outcome = solveLeastSquares(withoutRows(problem, new Set(wrong), x), options.solver);
    if (!outcome.ok) return null;
    const residuals = wrong.length === 0 ? first : residualsAt(problem, outcome.solution.x);
    return given(residuals, wrong) === null ? null : stateOf(residuals, wrong, outcome.solution, options);
  };

  while (state.wrong.length < atMost) {
    const worst = strongest(state.given.gain, suspectable);
    if (worst === null || Math.sqrt(state.given.gain[worst]!) <= state.yardstick.critical * state.yardstick.scale)
      break;
    const next = without(exchanged(state.residuals, [...state.wrong, worst], suspectable), state.solution.x);
    if (next === null) break;
    const again = exchanged(next.residuals, next.wrong, suspectable);
    state = sameRows(again, next.wrong) ? next : (without(again, next.solution.x) ?? next);
  }

  for (let back = leastNeeded(state, options); back !== null; back = leastNeeded(state, options)) {
    const next = without(
      state.wrong.filter((row) => row !== back),
      state.solution.x,
    );
    if (next === null) break;
    state = next;
  }

  const { wrong, solution } = state;
  return {
    blunders: wrong.map((_, k) => blunderOf(state, k, options)).sort((a, b) => b.statistic - a.statistic),
    critical: state.yardstick.critical,
    exhausted: state.wrong.length >= MOST,
    cleaned: solution,
    kept: Array.from(first.misfit.keys()).filter((row) => !wrong.includes(row)),
  };
}

interface State {
  wrong: number[];
  residuals: Residuals;
  given: Given;
  solution: LeastSquaresSolution;
  yardstick: Yardstick;
}

/** What statistics are measured in, and how large they must be. */
interface Yardstick {
  /** standard deviation of unit weight: 1 where the sigmas are trusted */
  scale: number;
  critical: number;
}

const stateOf = (
  residuals: Residuals,
  wrong: number[],
  solution: LeastSquaresSolution,
  options: SearchOptions,
): State => {
  const left = given(residuals, wrong)!;
  return { wrong, residuals, given: left, solution, yardstick: yardstickOf(left, options) };
};

function yardstickOf(
  { misfit, redundancy }: Given,
  { test, critical, suspectable = () => true, scaled = () => true }: SearchOptions,
): Yardstick {
  let [squares, freedom, tests] = [0, 0, 0];
  redundancy.forEach((share, row) => {
    if (share > 0 && suspectable(row)) tests++;
    if (!scaled(row)) return;
    squares += misfit[row]! ** 2;
    freedom += share;
  });
  // Where no scaled row has any freedom nothing estimates the scale, and no tau is beyond its critical value.
  const trusted = test === 'w' || freedom === 0;
  return { scale: trusted ? 1 : Math.sqrt(squares / freedom), critical: critical(tests, freedom) };
}

function strongest(gain: Float64Array, suspectable: (row: number) => boolean): number | null {
  let best: number | null = null;
  gain.forEach((each, row) => {
    if (each > (best === null ? 0 : gain[best]!) && suspectable(row)) best = row;
  });
  return best;
}

/** Exchanges rows taken out, one at a time, while that lowers the sum of squares of what is left in. */
function exchanged(residuals: Residuals, wrong: number[], suspectable: (row: number) => boolean): number[] {
  let current = wrong;
  for (let pass = 0; pass < 10 && current.length > 1; pass++) {
    let improved = false;
    for (const row of current) {
      const others = current.filter((other) => other !== row);
      const left = given(residuals, others);
      if (left === null) continue;
      const best = strongest(left.gain, suspectable);
      if (best === null || left.gain[best]! <= left.gain[row]! * (1 + 1e-9)) continue;
      if (given(residuals, [...others, best]) === null) continue;
      current = [...others, best];
      improved = true;
    }
    if (!improved) break;
  }
  return current;
}

/** The row taken out whose return hurts least, if it then passes the test. */
function leastNeeded({ wrong, residuals }: State, options: SearchOptions): number | null {
  let least: { row: number; excess: number } | null = null;
  for (const row of wrong) {
    const { statistic, critical } = returned(residuals, wrong, row, options);
    if (least === null || statistic - critical < least.excess) least = { row, excess: statistic - critical };
  }
  return least !== null && least.excess <= 0 ? least.row : null;
}

/** Test of one of the rows taken out, with only the others left out. */
function returned(
  residuals: Residuals,
  wrong: number[],
  row: number,
  options: SearchOptions,
): Yardstick & { left: Given; statistic: number } {
  const left = given(
    residuals,
    wrong.filter((other) => other !== row),
  )!;
  const yardstick = yardstickOf(left, options);
  return { left, ...yardstick, statistic: Math.sqrt(left.gain[row]!) / yardstick.scale };
}

function blunderOf({ wrong, residuals, given: all, yardstick }: State, k: number, options: SearchOptions): Blunder {
  const row = wrong[k]!;
  const { left, statistic } = returned(residuals, wrong, row, options);
  const { suspectable = () => true } = options;
  const lead = (other: number): number => (left.gain[row]! - left.gain[other]!) / yardstick.scale ** 2;
  const { value, sd } = all.errors[k]!;
  return {
    row,
    statistic,
    error: value,
    errorSd: sd,
    alternatives: Array.from(left.gain.keys())
      .filter((other) => other !== row && left.redundancy[other]! > 0 && suspectable(other) && lead(other) < SEPARATE)
      .sort((a, b) => left.gain[b]! - left.gain[a]!),
  };
}

const sameRows = (a: number[], b: number[]): boolean => a.length === b.length && a.every((row) => b.includes(row));
