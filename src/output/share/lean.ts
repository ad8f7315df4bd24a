import { type Job, jobSchema } from '../../core';

type Value = unknown;
type Keyed = Record<string, Value>;

/** The job without what its file may leave out: fields at their defaults. `parseJob` fills them in again. */
export function leanJob(job: Job): Value {
  const { format, version, readings, sheets } = job;
  const plain = jobSchema.parse({ format, version, readings: [], sheets });
  return { format, version, readings, sheets, ...(without(job, { ...plain, readings, sheets }) as Keyed) };
}

/** The part of `value` that differs from `other`, in objects key by key, lists whole. */
function without(value: Keyed, other: Keyed): Keyed {
  const differing: Keyed = {};
  for (const [key, mine] of Object.entries(value)) {
    const theirs = other[key];
    if (JSON.stringify(mine) === JSON.stringify(theirs)) continue;
    differing[key] = isKeyed(mine) && isKeyed(theirs) ? without(mine, theirs) : mine;
  }
  return differing;
}

const isKeyed = (value: Value): value is Keyed => typeof value === 'object' && value !== null && !Array.isArray(value);
