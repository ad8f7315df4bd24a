import {
  type BlunderSearch,
  type GroupTest,
  groupTest,
  normalCritical,
  SINGLE_SIGNIFICANCE,
  searchBlunders,
  tauCritical,
} from '../reliability';
import { type AlcoveFit, SOLVER } from './fit';
import type { AlcoveProblem } from './problem';

/** What the tests say about a fit. */
export interface Examination {
  /**
   * what the rows looked at mean; a fit made after it has as many readings and priors, but may have other rows for
   * scans
   */
  rows: AlcoveProblem['rows'];
  /** rows that look wrong, readings and priors */
  search: BlunderSearch;
  test: 'w' | 'tau';
  /** chi-square test of the readings' residuals against the instruments' standard deviations, suspects left out */
  global: GroupTest;
  /** factor by which the readings are rougher than their instruments, 1 unless the global test fails */
  scale: number;
}

/** Probability that a survey without a misread reading has one named. */
const FALSE_ALARMS = 0.01;
/** The global test fails below this probability. */
const GLOBAL_SIGNIFICANCE = 0.01;
/** With this many suspects a rough job is as likely. */
const MANY = 3;

/**
 * Significance of a single test: Baarda's 0.1 % (w beyond 3.29) for up to ten testable rows; with more, small enough that
 * all tests together raise a false alarm in at most one survey of a hundred (Bonferroni).
 */
const significance = (tests: number): number => Math.min(SINGLE_SIGNIFICANCE, FALSE_ALARMS / Math.max(1, tests));

/**
 * Looks for misread readings with the instruments' standard deviations taken as true (w). When the rest then still
 * disagrees by more than chance allows, or many look wrong, the whole job may be rough instead: the same search with
 * the standard deviation of unit weight estimated (tau). Of the two the likelier explanation stands, each suspect and the
 * estimated factor charged what a test at its significance would ask for it.
 */
export function examine({ problem, solution, model }: AlcoveFit): Examination {
  const { rows } = problem;
  const isReading = (row: number): boolean => 'observation' in rows[row]!;
  const common = {
    suspectable: (i: number) => {
      const row = rows[i]!;
      if ('parameter' in row) return !row.placeholder && !model.parameters[row.parameter]!.local;
      return 'observation' in row;
    },
    scaled: isReading,
    solver: SOLVER,
  };
  const globalOf = ({ cleaned, kept }: BlunderSearch): GroupTest =>
    groupTest(
      cleaned,
      kept.flatMap((row, i) => (isReading(row) ? [i] : [])),
    );

  const trusted = searchBlunders(problem, solution, {
    ...common,
    test: 'w',
    critical: (tests) => normalCritical(significance(tests)),
  });
  const global = globalOf(trusted);
  if (global.probability >= GLOBAL_SIGNIFICANCE && trusted.blunders.length < MANY) {
    return { rows, search: trusted, test: 'w', global, scale: 1 };
  }

  const estimated = searchBlunders(problem, solution, {
    ...common,
    test: 'tau',
    critical: (tests, dof) => tauCritical(significance(tests), dof),
  });
  const rough = globalOf(estimated);
  const roughJob: Examination = { rows, search: estimated, test: 'tau', global: rough, scale: scaleFrom(rough) };
  const price = trusted.critical ** 2;
  const misfitLeft = ({ global: { redundancy, factor } }: Pick<Examination, 'global'>): number =>
    redundancy * (factor ?? 1) ** 2;
  const ifTrusted = misfitLeft({ global }) + price * trusted.blunders.length;
  const ifRough = misfitLeft(roughJob) - gainFromRoughness(roughJob) + price * estimated.blunders.length;
  if (roughJob.scale > 1 && ifRough < ifTrusted) return roughJob;
  return { rows, search: trusted, test: 'w', global, scale: scaleFrom(global) };
}

/** The readings' standard deviations are scaled up, never down, and only when the global test fails. */
const scaleFrom = ({ factor, probability }: GroupTest): number =>
  factor === null || probability >= GLOBAL_SIGNIFICANCE ? 1 : Math.max(1, factor);

/** Gain in twice the log likelihood from scaling the standard deviations up, less what the global test asks. */
export function gainFromRoughness({ global, scale }: Examination): number {
  if (scale === 1) return 0;
  return global.redundancy * (scale ** 2 - 1 - 2 * Math.log(scale)) - normalCritical(GLOBAL_SIGNIFICANCE) ** 2;
}
