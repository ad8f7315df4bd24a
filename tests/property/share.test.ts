import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readLink, sharedJob, writeLink } from '../../src/output/share';
import { anyJob } from '../unit/core/anyJob';

const everything = { prices: true, client: true, notes: true };
const options = fc.record({ prices: fc.boolean(), client: fc.boolean(), notes: fc.boolean() });

describe('share link', () => {
  it('gives any job back as it was shared', () => {
    fc.assert(
      fc.property(anyJob, options, (job, chosen) => {
        const read = readLink(`#${writeLink(job, chosen)}`);
        expect(read.ok ? '' : read.message).toBe('');
        expect(read.ok && JSON.parse(JSON.stringify(read.job))).toEqual(
          JSON.parse(JSON.stringify(sharedJob(job, chosen))),
        );
      }),
      { numRuns: 60 },
    );
  });

  it('refuses any link with a character changed, left out or added, and any part of one', () => {
    const alphabet = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
    fc.assert(
      fc.property(anyJob, fc.nat(), fc.nat(63), fc.nat(2), (job, at, letter, how) => {
        const link = writeLink(job, everything);
        const start = 'link/1.'.length;
        const place = start + (at % (link.length - start));
        const other = alphabet[letter]!;
        fc.pre(how !== 0 || link[place] !== other);
        const damaged = [
          link.slice(0, place) + other + link.slice(place + 1),
          link.slice(0, place),
          link.slice(0, place) + other + link.slice(place),
        ][how]!;
        const read = readLink(damaged);
        expect(read.ok ? damaged : '').toBe('');
      }),
      { numRuns: 120 },
    );
  });

  it('answers any text with a sentence', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), fc.constantFrom('', 'link/', 'link/1.', '#link/1.'), (text, start) => {
        const read = readLink(start + text);
        expect(read.ok).toBe(false);
        expect(!read.ok && read.message).toMatch(/^[A-Z].*\.$/s);
      }),
    );
  });
});
