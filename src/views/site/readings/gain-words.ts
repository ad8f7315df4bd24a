import type { NextReading } from '../../../core';
import type { Lengths } from '../../parts';

/** What taking the advised reading would bring. */
export function gainWords({ sdBefore, sdAfter }: NextReading, lengths: Lengths): string {
  const [before, after] = [lengths.plusMinus(sdBefore), lengths.plusMinus(sdAfter)];
  if (before === after) return 'It would make the cut edges more certain.';
  return `It would bring the least certain cut edge from ${before} to ${after}.`;
}
