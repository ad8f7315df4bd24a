import type { z } from 'zod';

type Issue = z.core.$ZodRawIssue;

/** What a value of each type is called in a message. */
const TYPE_WORDS: Record<string, string> = {
  number: 'a number',
  int: 'a whole number',
  string: 'a text in quotes',
  boolean: 'true or false',
  array: 'a list in [ ]',
  tuple: 'a list in [ ]',
  object: 'a group in { }',
};

/**
 * The message for an issue that the schema has no words of its own for: what must stand there, and what was found.
 * Reads on from the path: `readings[3].value` `must be a number; found "5"`.
 */
export function inOurWords(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return mustBe(TYPE_WORDS[issue.expected] ?? issue.expected, issue.input);
    case 'invalid_value':
      return mustBe(oneOf(issue.values), issue.input);
    case 'invalid_union':
      return mustBe(oneOf(options(issue)), chosen(issue));
    case 'too_small':
      return bounded('least', issue.minimum, issue);
    case 'too_big':
      return bounded('most', issue.maximum, issue);
    case 'unrecognized_keys':
      return 'is not a known key; remove it or correct its spelling';
    case 'invalid_format':
      return issue.format === 'date' ? mustBe('a date such as "2026-05-04"', issue.input) : otherwise(issue.input);
    default:
      return otherwise(issue.input);
  }
}

const mustBe = (expected: string, input: unknown): string =>
  input === undefined ? `is missing; it must be ${expected}` : `must be ${expected}; found ${found(input)}`;

const otherwise = (input: unknown): string => `is not as it should be; found ${found(input)}`;

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? found(values[0]) : `one of ${values.map(found).join(', ')}`;

/** A number out of its range, or a text or list that is too short or too long. */
function bounded(way: 'least' | 'most', limit: number | bigint, { origin, input }: Issue & { origin: string }): string {
  if (origin === 'number' || origin === 'int') return `must be at ${way} ${limit}; found ${found(input)}`;
  const parts = origin === 'string' ? ['character', 'characters'] : ['entry', 'entries'];
  return `must have at ${way} ${limit} ${parts[Number(limit) === 1 ? 0 : 1]}; found ${(input as unknown[]).length}`;
}

type UnionIssue = Extract<Issue, { code: 'invalid_union' }>;

/** What the key that tells a union's members apart, such as a reading's `kind`, may be. */
const options = (issue: UnionIssue): unknown[] => (issue.options as unknown[] | undefined) ?? [];
/** What that key is. */
const chosen = ({ input, discriminator }: UnionIssue): unknown =>
  (input as Record<string, unknown>)[String(discriminator)];

const LONGEST_QUOTE = 40;

function found(input: unknown): string {
  if (typeof input === 'string') {
    return JSON.stringify(input.length > LONGEST_QUOTE ? `${input.slice(0, LONGEST_QUOTE)}…` : input);
  }
  if (Array.isArray(input)) return 'a list';
  if (typeof input === 'object' && input !== null) return 'a group';
  if (typeof input === 'number' && Number.isNaN(input)) return 'not a number (NaN)';
  return String(input);
}
