import {
  type DisplayUnit,
  degreeMark,
  jobSchema,
  parseLength,
  parseMoney,
  priceAMetre,
  soldLength,
  type Temperature,
  temperatureInside,
  temperatureShown,
} from '../core';
import type { Draft, DraftJob } from './draft';
import { type FieldPath, valueAt, withValueAt } from './path';

/**
 * What a field's text stands for. A `slope` is a length per foot or metre, `money-by-length` an amount for a foot or a
 * metre, `percent` a share; a `number` has its unit written beside the field and takes no other. Temperatures, changes of
 * it and what is counted for each degree go by the degree that is shown.
 */
export type EntryKind =
  | 'length'
  | 'degrees'
  | 'number'
  | 'percent'
  | 'slope'
  | 'money'
  | 'money-by-length'
  | Temperature;

/** True for what goes by the degree that is shown. */
export const isTemperature = (kind: EntryKind): kind is Temperature =>
  kind === 'temperature' || kind === 'temperature-change' || kind === 'per-degree';

/** The run, m, over which a slope is written: a foot where lengths are in inches, else a metre. */
export const slopeRun = (unit: DisplayUnit): number => (unit === 'in' ? 0.3048 : 1);

export type Entry = { ok: true; value: number } | { ok: false; message: string };

/** True for a text with nothing in it but perhaps a sign. */
export const isBlank = (text: string): boolean => /^\s*[-−–+]?\s*$/.test(text);

/**
 * Reads the text of a field, in the unit and the currency shown. Gives mm for a length, mm per m for a slope, minor
 * units for money (a metre), 0 to 1 for a share, °C, K or 1/K for what goes by degrees.
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
  if (isTemperature(kind)) return readTemperature(kind, text, unit);
  const value = numberOf(text.replace(/\s*[°%]\s*$/, ''));
  if (Number.isFinite(value))
    return { ok: true, value: kind === 'percent' ? Number((value / 100).toPrecision(12)) : value };
  return { ok: false, message: `"${text.trim()}" is not a number; write it like 89.5` };
}

const numberOf = (text: string): number => Number(text.trim().replace(',', '.').replace(/[−–]/, '-'));

/** A temperature in the degree shown, or in that written after it. */
function readTemperature(kind: Temperature, text: string, unit: DisplayUnit): Entry {
  const [, figure = '', written = ''] = /^(.*?)\s*(?:°\s*)?([CF]?)\s*$/i.exec(text) ?? [];
  const value = numberOf(figure);
  if (figure === '' || !Number.isFinite(value)) {
    const example = kind === 'temperature' ? (unit === 'in' ? '70' : '21') : '20';
    const degree = kind === 'per-degree' ? '' : `, in ${degreeMark(unit)}`;
    return { ok: false, message: `"${text.trim()}" is not a number; write it like ${example}${degree}` };
  }
  const degree = written === '' ? unit : written.toUpperCase() === 'F' ? 'in' : 'mm';
  return { ok: true, value: temperatureInside(kind, value, degree) };
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
  if (fault === null) return null;
  if (isTemperature(kind)) return inDegrees(fault, kind, draft.job.display);
  return kind === 'percent' ? inPercent(fault) : fault;
}

/** The figures of a sentence about shares, as the field shows them. */
const inPercent = (fault: string): string =>
  fault.replace(/-?\d+(\.\d+)?/g, (share) => `${Number((100 * Number(share)).toPrecision(12))} %`);

/** A sentence about temperatures in the degree that the field shows. */
const inDegrees = (fault: string, kind: Temperature, unit: DisplayUnit): string => {
  const mark = kind === 'per-degree' ? ` × 10⁻⁶ per ${degreeMark(unit)}` : ` ${degreeMark(unit)}`;
  return fault.replace(/ °C| × 10⁻⁶\/K/g, '').replace(/-?\d+(\.\d+)?(e[+-]?\d+)?/g, (inside) => {
    const shown = temperatureShown(kind, Number(inside), unit);
    return `${Number(shown.toPrecision(6))}${mark}`;
  });
};

/** Why a whole part of a job cannot stand as changed; null where it can. */
export function sectionFault<K extends keyof DraftJob>(section: K, value: DraftJob[K]): string | null {
  const parsed = jobSchema.shape[section].safeParse(value);
  return parsed.success ? null : (parsed.error.issues[0]?.message ?? 'is not valid');
}
