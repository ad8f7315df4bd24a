import type { Weight } from '../parts';

/** From so many characters on, apps that send messages may cut a link (common practice, no source). */
const MAY_BE_CUT = 16_000;

/** What is to be said of a link of so many characters; null where it is short enough for anything. */
export function linkLengthWords(
  characters: number,
  most: number,
  withScan: boolean,
): { weight: Weight; usable: boolean; words: string } | null {
  if (characters <= MAY_BE_CUT) return null;
  const long = `The link would be ${characters.toLocaleString()} characters long${withScan ? ', most of them the cells of the scan' : ''}.`;
  const file = 'Save the job as a job file, from the menu “Job”, and send that instead.';
  return characters > most
    ? { weight: 'bad', usable: false, words: `${long} So long a link cannot be opened. ${file}` }
    : { weight: 'warn', usable: true, words: `${long} Apps that send messages may cut it short. ${file}` };
}
