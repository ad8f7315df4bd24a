import type { DisplayUnit } from '../length';
import { MM_PER_INCH } from '../length';
import { otherDigits } from './digits';
import { otherFractions } from './fractions';
import type { Slip } from './slip';

/** A slip with how much commoner it is than the rarest. */
export interface Candidate extends Slip {
  weight: number;
}

/** Lengths by which a tape or rule is misread or wrongly held: mm and how common in each way of measuring. */
const OFFSETS: { kind: Slip['kind']; by: number; words: string; weight: Record<DisplayUnit, number> }[] = [
  { kind: 'inch', by: MM_PER_INCH, words: 'an inch', weight: { in: 20, mm: 1 } },
  { kind: 'half-inch', by: MM_PER_INCH / 2, words: 'a half inch', weight: { in: 10, mm: 0.5 } },
  { kind: 'quarter-inch', by: MM_PER_INCH / 4, words: 'a quarter inch', weight: { in: 4, mm: 0.2 } },
  { kind: 'foot', by: 12 * MM_PER_INCH, words: 'a foot', weight: { in: 10, mm: 0.5 } },
  { kind: 'ten-centimetres', by: 100, words: '100 mm', weight: { in: 0.5, mm: 20 } },
  { kind: 'centimetre', by: 10, words: '10 mm', weight: { in: 0.5, mm: 20 } },
];

/** A tape started at its first mark reads too long by that much: the commoner direction. */
const BURNT: Partial<Record<Slip['kind'], string>> = {
  inch: 'an inch too long: was the tape held at its 1 in mark?',
  'ten-centimetres': '100 mm too long: was the tape held at its 100 mm mark?',
  centimetre: '10 mm too long: was the tape held at its 10 mm mark?',
};

/** What a length read with a tape or a rule may have been. */
export function lengthCandidates(observed: number, display: DisplayUnit): Candidate[] {
  const offsets = OFFSETS.flatMap(({ kind, by, words, weight }) => [
    { kind, words: BURNT[kind] ?? `off by ${words}`, likely: observed - by, weight: 2 * weight[display] },
    { kind, words: `off by ${words}`, likely: observed + by, weight: weight[display] },
  ]);
  const inchShare = display === 'in' ? 1 : 0.05;
  return [
    ...offsets,
    ...otherFractions(observed).map((likely) => ({
      kind: 'fraction' as const,
      words: 'the fraction misread',
      likely,
      weight: 2 * inchShare,
    })),
    ...otherDigits(observed, display).map((each) => ({ ...each, weight: 1 })),
    {
      kind: 'unit',
      words:
        display === 'in' ? 'entered in inches but read in millimetres' : 'entered in millimetres but read in inches',
      likely: display === 'in' ? observed / MM_PER_INCH : observed * MM_PER_INCH,
      weight: 2,
    },
  ];
}

/** A hollow taken for a hump or the other way round. */
export const signCandidate = (observed: number): Candidate => ({
  kind: 'sign',
  words: 'a hollow and a hump confused: the sign turned',
  likely: -observed,
  weight: 20,
});

/** What an angle may have been, degrees. */
export const angleCandidates = (observed: number): Candidate[] => [
  { kind: 'supplement', words: 'read from the wrong leg: 180° less the angle', likely: 180 - observed, weight: 20 },
  { kind: 'misread-digit', words: 'off by a degree', likely: observed + 1, weight: 2 },
  { kind: 'misread-digit', words: 'off by a degree', likely: observed - 1, weight: 2 },
];
