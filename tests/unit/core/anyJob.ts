import fc from 'fast-check';
import { type Job, jobSchema, parseJob } from '../../../src/core/job-file';
import { fullPlan, jobWith, noisy, plausibleAlcove } from '../../simulate';
import { anyValue } from './anyValue';

type Keyed = Record<string | number, unknown>;

/** Any job that the schema takes: most of them of alcoves that cannot be. */
export const anyJob: fc.Arbitrary<Job> = anyValue(jobSchema, { '.readings': 20 }).map((value) =>
  mended(value as Keyed),
);

/** A full survey of an alcove that people build, with a few of the job's values replaced by any that the schema takes. */
export const slippedJob: fc.Arbitrary<Job> = fc
  .tuple(
    fc.integer({ min: 1, max: 100_000 }),
    anyValue(jobSchema, { '.readings': 60 }),
    fc.array(fc.nat(10_000), { minLength: 1, maxLength: 4 }),
  )
  .map(([seed, other, picks]) => {
    const job = jobWith(noisy(fullPlan(plausibleAlcove(seed), { seed }), seed)) as unknown as Keyed;
    for (const pick of picks) {
      const shared = sharedLeaves(job, other as Keyed);
      const place = shared[pick % shared.length];
      if (place !== undefined) place.at[place.key] = place.other;
    }
    return mended(job);
  });

/** Leaves that both values have at the same place, with the other's value. */
function sharedLeaves(value: Keyed, other: Keyed): { at: Keyed; key: string; other: unknown }[] {
  return Object.keys(value).flatMap((key) => {
    const [mine, theirs] = [value[key], other[key]];
    if (theirs === undefined || typeof mine !== typeof theirs) return [];
    if (typeof mine === 'object' && mine !== null) return sharedLeaves(mine as Keyed, theirs as Keyed);
    return key === 'id' || key === 'kind' || key === 'wall' ? [] : [{ at: value, key, other: theirs }];
  });
}

/** What the schema's refinements refuse is given new ids, put in order, or left out. */
function mended(value: Keyed): Job {
  for (const list of ['readings', 'fixtures', 'shelves', 'choices']) {
    (value[list] as Keyed[] | undefined)?.forEach((item, i) => {
      item.id = `${list}-${i}`;
    });
  }
  (value.rim as { profile?: [number, number][] } | undefined)?.profile?.sort(([a], [b]) => a - b);
  for (;;) {
    const parsed = parseJob(value);
    if (parsed.ok) return parsed.job;
    const [section, item] = parsed.faults[0]!.path.split(/[.[\]]+/) as [string, string];
    const held = value[section] as Keyed;
    if (Array.isArray(held)) held.splice(Number(item), 1);
    else if (item in held) delete held[item];
    else if (section === 'readings' || section === 'sheets')
      throw new Error(`${parsed.faults[0]!.path} cannot be mended`);
    else delete value[section];
  }
}
