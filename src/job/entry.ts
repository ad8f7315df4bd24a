import { type DisplayUnit, jobSchema, parseLength } from '../core';
import type { Draft, DraftJob } from './draft';
import { type FieldPath, valueAt, withValueAt } from './path';

/** What a field's text stands for. A `number` has its unit written beside the field and takes no other. */
export type EntryKind = 'length' | 'degrees' | 'number';

export type Entry = { ok: true; value: number } | { ok: false; message: string };

/** True for a text with nothing in it but perhaps a sign. */
export const isBlank = (text: string): boolean => /^\s*[-−–+]?\s*$/.test(text);

/** Reads the text of a field, in the unit shown. Gives mm for a length. */
export function readEntry(kind: EntryKind, text: string, unit: DisplayUnit): Entry {
  if (isBlank(text)) return { ok: false, message: 'needs a value' };
  if (kind === 'length') {
    const parsed = parseLength(text, unit);
    return parsed.ok ? { ok: true, value: parsed.mm } : parsed;
  }
  const value = Number(text.trim().replace(',', '.').replace(/[−–]/, '-').replace(/\s*°$/, ''));
  if (Number.isFinite(value)) return { ok: true, value };
  return { ok: false, message: `"${text.trim()}" is not a number; write it like 89.5` };
}

/** Why a value cannot stand at this place of the job; null where it can. */
export function rangeFault(job: DraftJob, path: FieldPath, value: unknown): string | null {
  const [section, ...inner] = path as [keyof DraftJob, ...FieldPath];
  const schema = jobSchema.shape[section];
  const changed = withValueAt(job, path, value)[section];
  const inList = Array.isArray(changed);
  const parsed = schema.safeParse(inList ? [valueAt(changed, [inner[0]!])] : changed);
  if (parsed.success) return null;
  const place = inList ? [0, ...inner.slice(1)] : inner;
  const issue = parsed.error.issues.find(
    ({ path: at }) => at.length === place.length && at.every((part, i) => part === place[i]),
  );
  return issue?.message ?? null;
}

/** What keeps a field from being used, in words that go on from its name; null where nothing does. */
export function fieldFault(draft: Draft, path: FieldPath, kind: EntryKind, text: string): string | null {
  const entry = readEntry(kind, text, draft.job.display);
  return entry.ok ? rangeFault(draft.job, path, entry.value) : entry.message;
}
