import type { Job, Result } from '../../core';

export type CalendarFile = { ok: true; text: string } | { ok: false; message: string };

const MINUTE = 60_000;

/**
 * The order of work as an iCalendar file (RFC 5545), one event a step. Times are floating: local time wherever the file
 * is opened. Waits are marked as free time.
 * @param now when the file is made, for DTSTAMP
 */
export async function orderOfWorkCalendar(job: Job, result: Result, now: Date): Promise<CalendarFile> {
  const { start } = job.schedule;
  if (start === undefined) {
    return {
      ok: false,
      message: 'The order of work has no first day yet; set the day on which work starts, then export the calendar.',
    };
  }
  const { default: ical, ICalEventTransparency } = await import('ical-generator');
  const midnight = Date.parse(`${start}T00:00:00Z`);
  const calendar = ical({ name: job.name, prodId: '//Nookwright//Order of work//EN' });
  for (const step of result.sequence) {
    calendar.createEvent({
      id: `${step.id}@${start}.nookwright`,
      // A floating time is written from the date's UTC fields, without a zone.
      floating: true,
      start: new Date(midnight + step.start * MINUTE),
      end: new Date(midnight + step.finish * MINUTE),
      stamp: now,
      summary: step.label,
      description: [...whoLines(step, job), ...step.cautions].join('\n') || null,
      transparency: step.kind === 'wait' ? ICalEventTransparency.TRANSPARENT : ICalEventTransparency.OPAQUE,
    });
  }
  return { ok: true, text: calendar.toString() };
}

/** Whose step it is, where two people share the work. */
function whoLines({ who }: Result['sequence'][number], { schedule: { people } }: Job): string[] {
  if (people === 1 || who.length === 0) return [];
  return [who.length === 2 ? 'Both people.' : `${who[0] === 1 ? 'First' : 'Second'} person.`];
}
