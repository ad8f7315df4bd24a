import type { MarkDrawing, Measure } from './drawing';
import type { Lengths } from './lengths';

export interface Leave {
  extra: Measure;
  /** numbers of the marks */
  marks: number[];
  /** `leave 1/16" extra at marks 2, 3 and scribe on dry fit` */
  words: string;
}

/** What to leave where the ± is too large to cut to the line; null where an edge can be cut to it. */
export function leaveExtra(
  marks: readonly Pick<MarkDrawing, 'number' | 'scribe' | 'plusMinus'>[],
  { roundedUp }: Lengths,
): Leave | null {
  const wide = marks.filter(({ scribe }) => scribe);
  if (wide.length === 0) return null;
  const extra = roundedUp(Math.max(...wide.map(({ plusMinus }) => plusMinus.mm)));
  const numbers = wide.map(({ number }) => number);
  const where =
    wide.length === marks.length ? '' : ` at ${numbers.length === 1 ? 'mark' : 'marks'} ${numbers.join(', ')}`;
  return { extra, marks: numbers, words: `leave ${extra.text} extra${where} and scribe on dry fit` };
}
