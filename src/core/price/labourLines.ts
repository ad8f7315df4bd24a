import type { Job, Prices } from '../job-file';
import type { Result } from '../result';
import type { SequenceStep } from '../sequence';
import { type PriceLine, priceLine } from './line';

type Part = Exclude<keyof Prices['labour'], 'hour'>;

const PARTS: readonly { part: Part | null; words: string; of: RegExp }[] = [
  { part: 'prepare', words: 'Prepare: shut off, walls, tape', of: /^(shut-off|prepare\.|tape-corners)/ },
  { part: 'cut', words: 'Cut panels and holes', of: /^(cut|holes)\./ },
  { part: 'fit', words: 'Dry fit and set panels', of: /^(dry-fit|set)\./ },
  { part: 'trim', words: 'Legs, trim and shelves', of: /^(leg|trim|shelf)\./ },
  { part: 'seal', words: 'Clean, seal and tool joints', of: /^(corner-bead|clean|seal\.)/ },
  { part: 'plumbing', words: 'Fit valve trim, spout and head', of: /^plumbing/ },
  { part: null, words: 'Hand over and all else', of: /^/ },
];

/** Work by part, in minutes of one person: a step that takes two counts twice. Waits cost nothing. */
export function labourLines({ prices }: Job, { sequence }: Pick<Result, 'sequence'>): PriceLine[] {
  const minutes = PARTS.map(() => 0);
  for (const step of sequence) {
    if (step.kind === 'wait') continue;
    const at = PARTS.findIndex(({ of }) => of.test(step.id));
    minutes[at]! += personMinutes(step);
  }
  return PARTS.flatMap(({ part, words }, i) => {
    if (minutes[i] === 0) return [];
    const rate = (part === null ? undefined : prices.labour[part]) ?? prices.labour.hour;
    return [priceLine(`labour.${part ?? 'rest'}`, 'labour', words, [minutes[i]!, 'minute'], rate)];
  });
}

const personMinutes = ({ duration, people }: SequenceStep): number => duration * people;
