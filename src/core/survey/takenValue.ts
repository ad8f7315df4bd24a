import type { Reading } from '../job-file';

/** A measurement taken once or several times. */
export interface TakenValue {
  /** what is used, in the reading's unit */
  mean: number;
  times: number;
  /** largest less smallest */
  spread: number;
}

/** What a reading and its repeats come to. */
export function takenValue({
  value,
  repeats = [],
}: Pick<Exclude<Reading, { kind: 'plumb' }>, 'value' | 'repeats'>): TakenValue {
  const all = [value, ...repeats];
  return {
    mean: all.reduce((sum, each) => sum + each, 0) / all.length,
    times: all.length,
    spread: Math.max(...all) - Math.min(...all),
  };
}
