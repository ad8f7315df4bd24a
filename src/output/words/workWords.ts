import type { Job } from '../../core';

const DAY = 24 * 60;

/** Minutes as `1 h 20 min`. */
export function durationWords(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** The day of a minute of the plan as `Fri 6 Mar`, or `day 2` where the job has no first day. */
export function dayWords(minute: number, { start }: Pick<Job['schedule'], 'start'>): string {
  const day = Math.floor(Math.round(minute) / DAY);
  if (start === undefined) return `day ${day + 1}`;
  const date = new Date(Date.parse(`${start}T00:00:00Z`) + day * DAY * 60_000);
  const words = new Intl.DateTimeFormat('en-GB', { weekday: 'short', day: 'numeric', month: 'short', timeZone: 'UTC' });
  return words.format(date).replace(',', '');
}

/** The time of day of a minute of the plan as `08:15`. */
export function timeWords(minute: number): string {
  const inDay = Math.round(minute) % DAY;
  return `${String(Math.floor(inDay / 60)).padStart(2, '0')}:${String(inDay % 60).padStart(2, '0')}`;
}

/** A minute of the plan as `Fri 6 Mar 08:15`, or `day 2, 08:15` where the job has no first day. */
export function whenWords(minute: number, schedule: Pick<Job['schedule'], 'start'>): string {
  return `${dayWords(minute, schedule)}${schedule.start === undefined ? ',' : ''} ${timeWords(minute)}`;
}
