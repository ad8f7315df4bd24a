import type { z } from 'zod';
import { type Job, jobSchema } from './job';
import { inOurWords } from './wording';

/** One fault in a job file: where (a path such as `readings[3].value`) and what to do about it. */
export interface Fault {
  path: string;
  message: string;
}

export type ParsedJob = { ok: true; job: Job } | { ok: false; faults: Fault[] };

/** Reads a job from the text of a file. Never throws. */
export function parseJobText(text: string): ParsedJob {
  const json = text.replace(/^\uFEFF/, '');
  let value: unknown;
  try {
    value = JSON.parse(json);
  } catch (error) {
    return { ok: false, faults: [{ path: '(file)', message: jsonFault(json, (error as Error).message) }] };
  }
  return parseJob(value);
}

/** Validates a value as a job and fills in the defaults. Never throws. */
export function parseJob(value: unknown): ParsedJob {
  const parsed = jobSchema.safeParse(value, { error: inOurWords });
  if (parsed.success) return { ok: true, job: parsed.data };
  return { ok: false, faults: parsed.error.issues.flatMap(toFaults) };
}

function toFaults(issue: z.core.$ZodIssue): Fault[] {
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((key) => ({
      path: pathText([...issue.path, key]),
      message: issue.message,
    }));
  }
  return [{ path: pathText(issue.path), message: issue.message }];
}

/** Where a text stops being JSON, as far as the engine's own message tells. */
function jsonFault(text: string, detail: string): string {
  if (text.trim() === '') return 'is empty; choose a job file';
  const position = /position (\d+)/.exec(detail)?.[1];
  if (position === undefined) return `is not valid JSON (${detail}); mend it in a text editor or use an earlier copy`;
  const lines = text.slice(0, Number(position)).split('\n');
  return (
    `is not valid JSON at line ${lines.length}, column ${lines.at(-1)!.length + 1}: ` +
    'look there for a comma, quote or bracket that is missing or too many'
  );
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
