import ICAL from 'ical.js';
import { describe, expect, it } from 'vitest';
import { solve } from '../../../src/core';
import { orderOfWorkCalendar } from '../../../src/output/calendar';
import { jobWith } from '../../simulate';

const now = new Date('2026-03-01T12:00:00Z');
const job = jobWith([], { name: 'Attic; bath, "north"', schedule: { start: '2026-03-06', people: 2 } });
const result = solve(job);

/** RFC 5545 as ical.js reads it, a parser that shares nothing with the writer. */
async function read() {
  const file = await orderOfWorkCalendar(job, result, now);
  if (!file.ok) throw new Error(file.message);
  return {
    text: file.text,
    events: new ICAL.Component(ICAL.parse(file.text)).getAllSubcomponents('vevent').map((each) => new ICAL.Event(each)),
  };
}

describe('order of work as a calendar', () => {
  it('has one event a step, with its times as local time of day', async () => {
    const { events } = await read();
    expect(events.length).toBe(result.sequence.length);
    events.forEach((event, i) => {
      const step = result.sequence[i]!;
      const day = 6 + Math.floor(step.start / 1440);
      expect(event.summary).toBe(step.label);
      expect(event.startDate.zone.tzid).toBe('floating');
      expect([event.startDate.day, event.startDate.hour]).toEqual([day, Math.floor((step.start % 1440) / 60)]);
      expect(event.duration.toSeconds()).toBe(Math.floor(step.finish * 60) - Math.floor(step.start * 60));
    });
  });

  it('keeps the weekend free of work', async () => {
    const { events } = await read();
    const work = events.filter((event) => event.component.getFirstPropertyValue('transp') === 'OPAQUE');
    for (const { startDate } of work)
      expect([ICAL.Time.SATURDAY, ICAL.Time.SUNDAY]).not.toContain(startDate.dayOfWeek());
  });

  it('folds lines to 75 octets and ends them with CRLF (RFC 5545, 3.1)', async () => {
    const { text } = await read();
    for (const line of text.split('\r\n')) {
      expect(Buffer.byteLength(line)).toBeLessThanOrEqual(75);
      expect(line).not.toContain('\n');
    }
  });

  it('asks for a first day where there is none', async () => {
    const file = await orderOfWorkCalendar({ ...job, schedule: { ...job.schedule, start: undefined } }, result, now);
    expect(file).toMatchObject({ ok: false });
  });
});
