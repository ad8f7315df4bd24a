import { z } from 'zod';

const day = 86_400_000;
/** A longer gap between two starts tells of a clock that was set as likely as of a rest: it counts as a day. */
const longestGap = 8 * day;

const waitingSchema = z.object({
  /** clock at the last start, ms since 1970 */
  seenAt: z.number(),
  /** time that has passed as far as the starts tell, ms */
  counted: z.number(),
  /** what was counted when a deleted job was first seen, by its id */
  since: z.record(z.string(), z.number()),
});

/** How long deleted jobs have waited, counted from one start of the app to the next. */
export type Waiting = z.infer<typeof waitingSchema>;

/** What was kept of an earlier count; null where it is none. */
export function waitingFrom(text: string | undefined): Waiting | null {
  try {
    return waitingSchema.parse(JSON.parse(text ?? ''));
  } catch {
    return null;
  }
}

/**
 * Counts on at a start of the app.
 * @param deleted ids of the jobs that are deleted
 * @param now clock, ms since 1970, which may have been set either way since
 * @param days so long a deleted job waits
 * @returns what to keep for the next start, and the jobs that have waited long enough
 */
export function countOn(
  before: Waiting | null,
  deleted: readonly string[],
  now: number,
  days: number,
): { waiting: Waiting; over: string[] } {
  const gap = Math.max(0, now - (before?.seenAt ?? now));
  const passed = gap > longestGap ? day : gap;
  const counted = (before?.counted ?? 0) + passed;
  const since = Object.fromEntries(deleted.map((id) => [id, before?.since[id] ?? counted]));
  const over = deleted.filter((id) => counted - since[id]! >= days * day);
  for (const id of over) delete since[id];
  return { waiting: { seenAt: now, counted, since }, over };
}
