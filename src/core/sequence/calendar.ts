import type { Schedule } from '../job-file';
import { inOrder } from './criticalPath';
import type { Task } from './task';

/** When a task runs. Minutes from midnight of the first day. */
export interface Booking {
  id: string;
  start: number;
  finish: number;
  /** who does it, first person 1, second 2; nobody for a wait */
  who: (1 | 2)[];
}

const DAY = 24 * 60;
const LONGEST_SEARCH = 4000;

/**
 * Lays tasks into working hours for one or two people: in the order of the graph, each as early as its predecessors,
 * the hours and the people allow (serial schedule generation; Kelley 1963). Work stops at the end of the day and goes
 * on the next; waits run through the night. A task that wants two people is done by one where only one is there.
 */
export function bookTasks(tasks: readonly Task[], schedule: Schedule): Booking[] {
  const workday = workdays(schedule);
  const bookings: Booking[] = [];
  const finish = new Map<string, number>();
  const busy: Busy[] = [];
  for (const task of inOrder(tasks)) {
    const ready = Math.max(0, ...task.after.map((id) => finish.get(id)!));
    const people = Math.min(task.people, schedule.people);
    const span =
      people === 0 ? { start: ready, finish: ready + task.duration } : firstFree(task.duration, ready, people);
    const who = freeHands(busy, span, schedule.people).slice(0, people);
    if (people > 0) busy.push({ ...span, who });
    finish.set(task.id, span.finish);
    bookings.push({ id: task.id, ...span, who });
  }
  return bookings;

  /** Earliest stretch from `ready` on in which enough people are free at every working minute. */
  function firstFree(duration: number, ready: number, people: number): { start: number; finish: number } {
    let start = workday.next(ready);
    for (let tries = 0; tries < LONGEST_SEARCH; tries++) {
      const span = { start, finish: workday.after(start, duration) };
      if (freeHands(busy, span, schedule.people).length >= people) return span;
      start = workday.next(Math.min(...busy.filter((other) => overlap(other, span)).map((other) => other.finish)));
    }
    return { start, finish: workday.after(start, duration) };
  }
}

interface Span {
  start: number;
  finish: number;
}
type Busy = Span & { who: (1 | 2)[] };

const overlap = (a: Span, b: Span): boolean => a.start < b.finish && a.finish > b.start;

/** Who has nothing else to do all through a span. */
function freeHands(busy: readonly Busy[], span: Span, people: number): (1 | 2)[] {
  const taken = new Set(busy.filter((other) => overlap(other, span)).flatMap(({ who }) => who));
  return ([1, 2] as const).slice(0, people).filter((person) => !taken.has(person));
}

/** Weekday of the plan's first day, 1 = Monday; without a date the plan begins on the first day of work. */
function firstWeekday({ start, days }: Schedule): number {
  if (start === undefined) return Math.min(...days);
  return ((new Date(`${start}T00:00:00Z`).getUTCDay() + 6) % 7) + 1;
}

function workdays(schedule: Schedule) {
  const { from, to, days } = schedule;
  const first = firstWeekday(schedule);
  const open = (day: number): boolean => days.includes(((first - 1 + day) % 7) + 1);
  /** start of work on the first working day after a day */
  const morningAfter = (day: number): number => {
    let next = day + 1;
    while (!open(next)) next++;
    return next * DAY + from;
  };
  /** the minute itself if it is worked, else the next that is */
  const next = (minute: number): number => {
    const day = Math.floor(minute / DAY);
    return open(day) && minute - day * DAY < to ? Math.max(minute, day * DAY + from) : morningAfter(day);
  };
  return {
    next,
    /** when a stretch of work that begins at a worked minute is done */
    after(start: number, duration: number): number {
      let at = start;
      let left = duration;
      for (;;) {
        const day = Math.floor(at / DAY);
        const end = day * DAY + to;
        if (left <= end - at) return at + left;
        left -= Math.max(0, end - at);
        at = morningAfter(day);
      }
    },
  };
}
