import type { Job } from '../job-file';
import { bookTasks } from './calendar';
import { criticalPath } from './criticalPath';
import type { Task } from './task';
import { tasksFor, type Worked } from './tasks';

/** A step of the work in its place in time. */
export interface SequenceStep extends Task {
  /** minutes from midnight of the first day */
  start: number;
  finish: number;
  /** who does it, first person 1, second 2; nobody for a wait */
  who: (1 | 2)[];
  /** minutes it can slip without moving the end, with people at all hours */
  float: number;
  critical: boolean;
  /** ids of waits that run meanwhile: the step can be done while those cure */
  during: string[];
}

/** The order of work: every step with its times, in the order in which they begin. */
export function sequenceFor(job: Job, worked: Worked): SequenceStep[] {
  const tasks = tasksFor(job, worked);
  const path = criticalPath(tasks);
  if (!path.ok) throw new Error(`order of work: ${path.stuck.join(', ')} wait for each other`);
  const bookings = new Map(bookTasks(tasks, job.schedule).map((booking) => [booking.id, booking]));
  const times = new Map(path.times.map((each) => [each.id, each]));
  const waits = tasks.filter(({ kind }) => kind === 'wait').map(({ id }) => bookings.get(id)!);
  return tasks
    .map((task): SequenceStep => {
      const { start, finish, who } = bookings.get(task.id)!;
      const { float, critical } = times.get(task.id)!;
      const during =
        task.kind === 'wait'
          ? []
          : waits.filter((wait) => wait.start <= start && wait.finish >= finish).map(({ id }) => id);
      return { ...task, start, finish, who, float, critical, during };
    })
    .sort((a, b) => a.start - b.start);
}
