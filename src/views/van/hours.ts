import { timeWords } from '../../output';

const STEP = 30;
const LEAST_DAY = 60;
const DAY = 24 * 60;

type Choice = [value: string, words: string];

/** Half hours from one minute of the day to another, with the one in hand where it is none of them. */
function halfHours(first: number, last: number, inHand: number): Choice[] {
  const all = new Set([inHand]);
  for (let minute = Math.ceil(first / STEP) * STEP; minute <= last; minute += STEP) all.add(minute);
  return [...all].sort((a, b) => a - b).map((minute) => [String(minute), minute === DAY ? '24:00' : timeWords(minute)]);
}

/** When work can begin so that a day of work is at least an hour. */
export const beginChoices = ({ from, to }: { from: number; to: number }) => halfHours(0, to - LEAST_DAY, from);

/** When work can end so that a day of work is at least an hour. */
export const endChoices = ({ from, to }: { from: number; to: number }) => halfHours(from + LEAST_DAY, DAY, to);
