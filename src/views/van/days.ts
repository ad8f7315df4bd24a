import type { Job, SequenceStep } from '../../core';
import { capital, dayWords } from '../../output';

/** The steps that begin on each day, days in order. */
export function byDay(
  sequence: readonly SequenceStep[],
  schedule: Pick<Job['schedule'], 'start'>,
): { day: string; steps: SequenceStep[] }[] {
  const days = new Map<string, SequenceStep[]>();
  for (const step of sequence) {
    const day = capital(dayWords(step.start, schedule));
    days.set(day, [...(days.get(day) ?? []), step]);
  }
  return [...days].map(([day, steps]) => ({ day, steps }));
}
