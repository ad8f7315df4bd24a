import { z } from 'zod';
import { type Fault, jobSchema, parseJob } from '../../core';
import { isFieldKey } from '../path';
import { limits } from './limits';

const shape = z.strictObject({
  job: z.looseObject({
    readings: z.array(z.unknown()).max(5000),
    fixtures: z.array(z.unknown()).max(500),
    studs: z.array(z.unknown()).max(500).default([]),
  }),
  typed: z.record(z.string().max(500), z.string().max(limits.typedLength)),
});

/**
 * What cannot be true of an unfinished job: a value of the wrong kind, an unknown key. What is only missing or out of its
 * range is no fault, since a draft sets that aside.
 */
export function draftFaults(value: unknown): Fault[] {
  const parsed = shape.safeParse(value);
  if (!parsed.success)
    return parsed.error.issues.map(({ path, message }) => ({ path: path.map(String).join('.'), message }));
  const { job, typed } = parsed.data;
  const keys = Object.keys(typed);
  const texts =
    keys.length > limits.typed
      ? [{ path: 'typed', message: `holds more than ${limits.typed} texts` }]
      : keys
          .filter((key) => !isFieldKey(key))
          .map((key) => ({ path: `typed.${key}`, message: 'does not name a field' }));
  const sections = parseJob({ ...job, readings: [], fixtures: [], studs: [] });
  return [
    ...texts,
    ...(sections.ok ? [] : sections.faults),
    ...itemFaults('readings', job.readings),
    ...itemFaults('fixtures', job.fixtures),
    ...itemFaults('studs', job.studs),
  ];
}

function itemFaults(list: 'readings' | 'fixtures' | 'studs', items: readonly unknown[]): Fault[] {
  const ids = new Set<unknown>();
  return items.flatMap((item, i) => {
    const { id } = (item ?? {}) as { id?: unknown };
    const twice = ids.has(id);
    ids.add(id);
    if (twice || typeof id !== 'string') return [{ path: `${list}[${i}].id`, message: 'must be there once' }];
    const parsed = jobSchema.shape[list].safeParse([item]);
    return (parsed.success ? [] : parsed.error.issues)
      .filter((issue) => !isUnfinished(issue, [item]))
      .map(({ path, message }) => ({
        path: `${list}[${i}]${path
          .slice(1)
          .map((key) => `.${String(key)}`)
          .join('')}`,
        message,
      }));
  });
}

function isUnfinished(issue: z.core.$ZodIssue, items: unknown): boolean {
  switch (issue.code) {
    case 'custom':
    case 'too_small':
      return true;
    case 'too_big':
      return issue.origin === 'number';
    default:
      return issue.path.length > 1 && at(items, issue.path) === undefined;
  }
}

const at = (root: unknown, path: readonly PropertyKey[]): unknown =>
  path.reduce((value, key) => (value as Record<PropertyKey, unknown> | null | undefined)?.[key], root);
