import type { SequenceStep } from '../../core';
import { durationWords } from '../../output';

/** How much later a step can end without moving the end of the job. */
export function slipWords({ critical, float }: Pick<SequenceStep, 'critical' | 'float'>): string {
  return critical || float < 0.5 ? 'cannot slip' : `can slip ${durationWords(float)}`;
}
