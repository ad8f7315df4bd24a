import type { RawScan } from '../../../scan';

/** What the person should know of how a file was read, a sentence each. */
export function readNotes({ seen, cube, unread, atZero, mesh }: RawScan, cubeText: string): string[] {
  const notes: string[] = [];
  if (cube !== null) {
    notes.push(`${seen.toLocaleString()} points were thinned: one was kept in each cube of ${cubeText}.`);
  }
  if (unread > 0)
    notes.push(`${unread.toLocaleString()} points were no numbers, or too far away to be places, and are left out.`);
  if (atZero > 0) {
    notes.push(
      `${atZero.toLocaleString()} points lie at exactly 0, 0, 0, where scanners put what did not come back; they are left out.`,
    );
  }
  if (mesh) {
    notes.push(
      'A mesh was smoothed when it was made: its noise looks smaller than it is, and inside corners are rounded.',
    );
  }
  return notes;
}
