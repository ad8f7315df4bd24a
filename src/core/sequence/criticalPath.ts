import type { Task } from './task';

/** When a task can and must run, minutes from the start, with enough people at all hours. */
export interface TaskTimes {
  id: string;
  earliestStart: number;
  earliestFinish: number;
  latestStart: number;
  latestFinish: number;
  /** minutes it can slip without moving the end */
  float: number;
  critical: boolean;
}

export type CriticalPath =
  | { ok: true; times: TaskTimes[]; duration: number }
  | { ok: false /** ids that wait for each other, or for a task that is not there */; stuck: string[] };

type NetworkTask = Pick<Task, 'id' | 'duration' | 'after'>;

/** Critical path method: forward and backward pass over the task graph (Kelley and Walker 1959). */
export function criticalPath(tasks: readonly NetworkTask[]): CriticalPath {
  const order = inOrder(tasks);
  if (order.length < tasks.length) {
    const placed = new Set(order.map(({ id }) => id));
    return { ok: false, stuck: tasks.filter(({ id }) => !placed.has(id)).map(({ id }) => id) };
  }
  const finish = new Map<string, number>();
  for (const { id, duration, after } of order) {
    finish.set(id, Math.max(0, ...after.map((before) => finish.get(before)!)) + duration);
  }
  const duration = Math.max(0, ...finish.values());
  const latest = new Map<string, number>(tasks.map(({ id }) => [id, duration]));
  for (const task of [...order].reverse()) {
    for (const before of task.after) {
      latest.set(before, Math.min(latest.get(before)!, latest.get(task.id)! - task.duration));
    }
  }
  const times = tasks.map(({ id, duration: own }): TaskTimes => {
    const float = latest.get(id)! - finish.get(id)!;
    return {
      id,
      earliestStart: finish.get(id)! - own,
      earliestFinish: finish.get(id)!,
      latestStart: latest.get(id)! - own,
      latestFinish: latest.get(id)!,
      float,
      critical: float < 1e-9,
    };
  });
  return { ok: true, times, duration };
}

/** Tasks with every predecessor before them; those in or behind a cycle are left out. */
export function inOrder<T extends Pick<Task, 'id' | 'after'>>(tasks: readonly T[]): T[] {
  const done = new Set<string>();
  const order: T[] = [];
  let waiting = [...tasks];
  for (;;) {
    const ready = waiting.filter(({ after }) => after.every((id) => done.has(id)));
    if (ready.length === 0) return order;
    for (const task of ready) {
      done.add(task.id);
      order.push(task);
    }
    waiting = waiting.filter((task) => !done.has(task.id));
  }
}
