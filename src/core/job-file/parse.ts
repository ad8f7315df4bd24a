import type { z } from 'zod';
import { type Job, jobSchema } from './job';

/** One fault in a job file: where (a path such as `readings[3].value`) and what to do about it. */
export interface Fault {
  path: string;
  message: string;
}

export type ParsedJob = { ok: true; job: Job } | { ok: false; faults: Fault[] };

/** Reads a job from the text of a file. Never throws. */
export function parseJobText(text: string): ParsedJob {
  let value: unknown;
  try {
    value = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch (error) {
    return { ok: false, faults: [{ path: '(file)', message: `is not valid JSON: ${(error as Error).message}` }] };
  }
  return parseJob(value);
}

/** Validates a value as a job and fills in the defaults. Never throws. */
export function parseJob(value: unknown): ParsedJob {
  const parsed = jobSchema.safeParse(value);
  if (parsed.success) return { ok: true, job: parsed.data };
  return { ok: false, faults: parsed.error.issues.flatMap(toFaults) };
}

function toFaults(issue: z.core.$ZodIssue): Fault[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...issue.path, key]),
      message: 'is not a known key; remove it or correct its spelling',
    }));
  }
  return [{ path: pathText(issue.path), message: lowerFirst(issue.message) }];
}

/** `['readings', 3, 'value']` as `readings[3].value`. */
export function pathText(path: readonly PropertyKey[]): string {
  let text = '';
  for (const key of path) {
    if (typeof key === 'number') text += `[${key}]`;
    else text += text ? `.${String(key)}` : String(key);
  }
  return text || '(file)';
}

const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);
