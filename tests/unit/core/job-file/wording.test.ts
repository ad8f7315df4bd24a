import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { inOurWords } from '../../../../src/core/job-file/wording';

const message = (schema: z.ZodType, value: unknown): string | undefined =>
  schema.safeParse(value, { error: inOurWords }).error?.issues[0]?.message;

describe('inOurWords', () => {
  it.each([
    [z.number(), 'five', 'must be a number; found "five"'],
    [z.number(), undefined, 'is missing; it must be a number'],
    [z.number(), null, 'must be a number; found null'],
    [z.number(), Number.NaN, 'must be a number; found not a number (NaN)'],
    [z.number(), Number.NEGATIVE_INFINITY, 'must be a number; found -Infinity'],
    [z.string(), false, 'must be a text in quotes; found false'],
    [z.boolean(), 'no', 'must be true or false; found "no"'],
    [z.array(z.number()), {}, 'must be a list in [ ]; found a group'],
    [z.strictObject({}), [], 'must be a group in { }; found a list'],
    [z.tuple([z.number()]), 4, 'must be a list in [ ]; found 4'],
    [z.literal(1), 2, 'must be 1; found 2'],
    [z.enum(['in', 'mm']), 'cm', 'must be one of "in", "mm"; found "cm"'],
    [z.array(z.number()).min(2), [1], 'must have at least 2 entries; found 1'],
    [z.array(z.number()).min(1), [], 'must have at least 1 entry; found 0'],
    [z.string().max(2), 'abc', 'must have at most 2 characters; found 3'],
    [z.number().int().min(1).max(7), 8, 'must be at most 7; found 8'],
    [z.number().int().min(1).max(7), 0, 'must be at least 1; found 0'],
    [z.number().int(), 1.5, 'must be a whole number; found 1.5'],
    [z.iso.date(), '31.12.2026', 'must be a date such as "2026-05-04"; found "31.12.2026"'],
    [z.strictObject({}), { a: 1 }, 'is not a known key; remove it or correct its spelling'],
    [z.string().regex(/a/), 'b', 'is not as it should be; found "b"'],
  ])('%# %j', (schema, value, expected) => {
    expect(message(schema, value)).toBe(expected);
  });

  it('asks for the key that tells members of a union apart', () => {
    const union = z.discriminatedUnion('kind', [
      z.strictObject({ kind: z.literal('a') }),
      z.strictObject({ kind: z.literal('b') }),
    ]);
    expect(message(union, { kind: 'c' })).toBe('must be one of "a", "b"; found "c"');
    expect(message(union, {})).toBe('is missing; it must be one of "a", "b"');
    expect(message(union, 3)).toBe('must be a group in { }; found 3');
  });

  it('quotes the beginning of a long text only', () => {
    expect(message(z.number(), 'x'.repeat(500))).toBe(`must be a number; found "${'x'.repeat(40)}…"`);
  });
});
