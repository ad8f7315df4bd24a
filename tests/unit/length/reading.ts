import { type DisplayUnit, parseLength } from '../../../src/core/length';

/** Millimetres that a text stands for; the refusal as an error where it is refused. */
export function mmOf(text: string, unit: DisplayUnit = 'in'): number {
  const parsed = parseLength(text, unit);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.mm;
}

/** The sentence with which a text is refused. */
export function refusalOf(text: string, unit: DisplayUnit = 'in'): string {
  const parsed = parseLength(text, unit);
  if (parsed.ok) throw new Error(`${text} was read as ${parsed.mm} mm`);
  return parsed.message;
}
