import type { z } from 'zod';

type Issue = z.core.$ZodRawIssue;

/** What a value of each type is called in a message. */
const TYPE_WORDS: Record<string, string> = {
  number: 'a number',
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
      return `must have at least ${issue.minimum} ${partsOf(issue.origin)}; found ${lengthOf(issue.input)}`;
    case 'too_big':
      return `must have at most ${issue.maximum} ${partsOf(issue.origin)}; found ${lengthOf(issue.input)}`;
    case 'unrecognized_keys':
      return 'is not a known key; remove it or correct its spelling';
    default:
      return `is not as it should be; found ${found(issue.input)}`;
  }
}

const mustBe = (expected: string, input: unknown): string =>
  input === undefined ? `is missing; it must be ${expected}` : `must be ${expected}; found ${found(input)}`;

const oneOf = (values: readonly unknown[]): string =>
  values.length === 1 ? found(values[0]) : `one of ${values.map(found).join(', ')}`;

const partsOf = (origin: string): string => (origin === 'string' ? 'characters' : 'entries');
const lengthOf = (input: unknown): number => (input as { length: number }).length;

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
