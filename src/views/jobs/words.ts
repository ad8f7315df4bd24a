import type { JobSummary } from '../../job';
import { counted } from '../../output';

const time = new Intl.DateTimeFormat(undefined, { dateStyle: 'medium', timeStyle: 'short' });

export const moment = (ms: number): string => time.format(ms);

/** What is in a job, for one line. */
export function contentsOf({ readings, unfinished, photos }: Pick<JobSummary, 'readings' | 'unfinished' | 'photos'>) {
  return [
    counted(readings, 'reading'),
    ...(unfinished > 0 ? [`${unfinished} not finished`] : []),
    ...(photos > 0 ? [counted(photos, 'photo')] : []),
  ].join(' · ');
}

const day = 86_400_000;

/** How long a deleted job still waits. By a clock that was set meanwhile it is never more than the whole time. */
export function waitsFor(deletedAt: number, deletedFor: number, now: number = Date.now()): string {
  const left = Math.min(deletedFor, Math.ceil((deletedAt + deletedFor * day - now) / day));
  return left > 0 ? `${counted(left, 'day')} left` : 'goes soon';
}
