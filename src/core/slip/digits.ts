import { type DisplayUnit, MM_PER_INCH } from '../length';
import type { Slip } from './slip';

/** Digits that look alike upside down, on a worn tape or in a hurried hand. */
const ALIKE: Record<string, string> = {
  '0': '68',
  '1': '7',
  '3': '8',
  '4': '9',
  '5': '6',
  '6': '0589',
  '7': '1',
  '8': '036',
  '9': '46',
};

/** Lengths whose whole inches or millimetres differ from this one's by two neighbouring digits or one misread one, mm. */
export function otherDigits(mm: number, display: DisplayUnit): Pick<Slip, 'kind' | 'words' | 'likely'>[] {
  const unit = display === 'in' ? MM_PER_INCH : 1;
  const size = Math.abs(mm) / unit;
  const whole = Math.floor(size + 1e-6);
  const digits = [...String(whole)];
  const lengthOf = (changed: string[]): number => Math.sign(mm) * (Number(changed.join('')) + size - whole) * unit;

  const swaps = digits.slice(1).flatMap((second, i) => {
    const first = digits[i]!;
    if (first === second) return [];
    const likely = lengthOf(digits.with(i, second).with(i + 1, first));
    return [{ kind: 'swapped-digits' as const, words: 'two digits swapped', likely }];
  });
  const misread = digits.flatMap((digit, i) =>
    [...(ALIKE[digit] ?? '')].map((other) => ({
      kind: 'misread-digit' as const,
      words: `a ${digit} that was a ${other}`,
      likely: lengthOf(digits.with(i, other)),
    })),
  );
  return [...swaps, ...misread];
}
