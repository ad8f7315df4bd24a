import { type DisplayUnit, jobSchema, parseLength, parseMoney, priceAMetre, soldLength } from '../core';
import type { Draft, DraftJob } from './draft';
import { type FieldPath, valueAt, withValueAt } from './path';

/**
 * What a field's text stands for. A `slope` is a length per foot or metre, `money-by-length` an amount for a foot or a
 * metre, `percent` a share; a `number` has its unit written beside the field and takes no other.
 */
export type EntryKind = 'length' | 'degrees' | 'number' | 'percent' | 'slope' | 'money' | 'money-by-length';

/** The run, m, over which a slope is written: a foot where lengths are in inches, else a metre. */
export const slopeRun = (unit: DisplayUnit): number => (unit === 'in' ? 0.3048 : 1);

export type Entry = { ok: true; value: number } | { ok: false; message: string };

/** True for a text with nothing in it but perhaps a sign. */
export const isBlank = (text: string): boolean => /^\s*[-−–+]?\s*$/.test(text);

/**
 * Reads the text of a field, in the unit and the currency shown. Gives mm for a length, mm per m for a slope, minor
 * units for money (a metre), 0 to 1 for a share.
 */
export function readEntry(kind: EntryKind, text: string, unit: DisplayUnit, currency = 'USD'): Entry {
  if (isBlank(text)) return { ok: false, message: 'needs a value' };
  if (kind === 'length' || kind === 'slope') {
    const parsed = parseLength(text, unit);
    const per = kind === 'slope' ? slopeRun(unit) : 1;
    return parsed.ok ? { ok: true, value: parsed.mm / per } : parsed;
  }
  if (kind === 'money' || kind === 'money-by-length') {
    const parsed = parseMoney(text, currency);
    if (!parsed.ok) return parsed;
    return { ok: true, value: kind === 'money' ? parsed.amount : priceAMetre(parsed.amount, soldLength(unit)) };
  }
  const value = Number(
    text
      .trim()
      .replace(',', '.')
      .replace(/[−–]/, '-')
      .replace(/\s*[°%]$/, ''),
  );
  if (Number.isFinite(value))
    return { ok: true, value: kind === 'percent' ? Number((value / 100).toPrecision(12)) : value };
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
    ({ path: at }) =>
      (at.length === place.length || (!inList && isListRule(changed, at))) && at.every((part, i) => part === place[i]),
  );
  return issue?.message ?? null;
}

/** True where a fault lies in how the items of a list stand to each other, which is told at the one being changed. */
const isListRule = (section: unknown, at: readonly PropertyKey[]): boolean =>
  at.length > 0 && Array.isArray(valueAt(section, at as FieldPath));

/** What keeps a field from being used, in words that go on from its name; null where nothing does. */
export function fieldFault(draft: Draft, path: FieldPath, kind: EntryKind, text: string): string | null {
  const entry = readEntry(kind, text, draft.job.display, draft.job.prices.currency);
  if (!entry.ok) return entry.message;
  const fault = rangeFault(draft.job, path, entry.value);
  return kind === 'percent' && fault !== null ? inPercent(fault) : fault;
}

/** The figures of a sentence about shares, as the field shows them. */
const inPercent = (fault: string): string =>
  fault.replace(/-?\d+(\.\d+)?/g, (share) => `${Number((100 * Number(share)).toPrecision(12))} %`);

/** Why a whole part of a job cannot stand as changed; null where it can. */
export function sectionFault<K extends keyof DraftJob>(section: K, value: DraftJob[K]): string | null {
  const parsed = jobSchema.shape[section].safeParse(value);
  return parsed.success ? null : (parsed.error.issues[0]?.message ?? 'is not valid');
}
