import type { Job, SequenceStep } from '../../core';
import { dayWords, durationWords, timeWords, whenWords } from '../../output';

/** How much later a step can end without moving the end of the job. */
export function slipWords({ critical, float }: Pick<SequenceStep, 'critical' | 'float'>): string {
  return critical || float < 0.5 ? 'cannot slip' : `can slip ${durationWords(float)}`;
}

/** When a step ends, with the day where that is another than it began on. */
export function untilWords(
  { start, finish }: Pick<SequenceStep, 'start' | 'finish'>,
  schedule: Pick<Job['schedule'], 'start'>,
): string {
  return dayWords(start, schedule) === dayWords(finish, schedule) ? timeWords(finish) : whenWords(finish, schedule);
}
