import { readdirSync, readFileSync } from 'node:fs';
import { deflateSync, strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { type Job, parseJobText } from '../../../../src/core';
import { isLink, readLink, sharedJob, writeLink } from '../../../../src/output/share';
import { toBase64url } from '../../../../src/output/share/base64url';
import { DICTIONARY } from '../../../../src/output/share/dictionary';
import { checkOf } from '../../../../src/output/share/format';

const everything = { prices: true, client: true, notes: true };
const scenes = new URL('../../../../scenes/', import.meta.url);
const demos = readdirSync(scenes)
  .filter((file) => file.endsWith('.json'))
  .map((file): [string, Job] => {
    const parsed = parseJobText(readFileSync(new URL(file, scenes), 'utf8'));
    if (!parsed.ok) throw new Error(file);
    return [file, parsed.job];
  });

/** A link with a right check over whatever it carries. */
function linkWith(body: Uint8Array, version = 1): string {
  const check = checkOf(version, body);
  return `link/${version}.${toBase64url(new Uint8Array([...check, ...body]))}`;
}
const packed = (text: string): Uint8Array => deflateSync(strToU8(text), { dictionary: DICTIONARY });
const refusal = (link: string): string => {
  const read = readLink(link);
  return read.ok ? 'taken' : read.message;
};

describe('share link', () => {
  it.each(demos)('gives %s back, in a few thousand characters', (_, job) => {
    const link = writeLink(job, everything);
    expect(readLink(`#${link}`)).toEqual({ ok: true, job });
    expect(link).toMatch(/^link\/1\.[\w-]+$/);
    expect(link.length).toBeLessThan(3000);
  });

  it('leaves prices, names and notes out where told to', () => {
    const [, demo] = demos[0]!;
    const job: Job = {
      ...demo,
      prices: { ...demo.prices, shelf: 98765 },
      quote: { ...demo.quote, client: 'Fen family', from: 'Workshop', number: '7' },
      readings: demo.readings.map((reading) => ({ ...reading, note: 'gate code' })),
    };
    const bare = { prices: false, client: false, notes: false };
    const read = readLink(writeLink(job, bare));
    expect(read).toEqual({ ok: true, job: sharedJob(job, bare) });
    const text = JSON.stringify(read);
    for (const secret of ['98765', 'Fen family', 'Workshop', 'gate code']) expect(text).not.toContain(secret);
    expect(JSON.stringify(readLink(writeLink(job, everything)))).toContain('98765');
  });

  it('tells a link from the other addresses of the app', () => {
    expect(['#link/1.abc', 'link/'].map(isLink)).toEqual([true, true]);
    expect(['#site/readings', '', '#linked'].map(isLink)).toEqual([false, false, false]);
  });

  it('refuses a bomb without unpacking it', () => {
    const bomb = deflateSync(new Uint8Array(120_000_000), { level: 9, dictionary: DICTIONARY });
    expect(bomb.length).toBeLessThan(140_000);
    const before = process.memoryUsage().arrayBuffers;
    expect(refusal(linkWith(bomb))).toMatch(/cannot be unpacked, or is far larger/);
    expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(40_000_000);
  });

  it.each([
    ['a huge one', `link/1.${'A'.repeat(300_000)}`, /far longer than any job needs/],
    ['no version', 'link/abc', /which version/],
    ['a newer version', 'link/2.AAAA', /newer version/],
    ['version 0', 'link/0.AAAA', /no version 0/],
    ['other characters', 'link/1.AA+/==', /characters that no link/],
    ['an impossible length', 'link/1.AAAAA', /characters that no link|cut short/],
    ['nothing', 'link/1.', /cut short/],
    ['a wrong check', `link/1.${toBase64url(new Uint8Array(64))}`, /cut short or changed/],
    ['no compressed data', linkWith(new Uint8Array([255, 254, 253, 252])), /cannot be unpacked/],
    [
      'half of the compressed data',
      linkWith(packed('{"format":"x"}'.repeat(50)).slice(0, 20)),
      /cannot be unpacked|is not valid JSON/,
    ],
    ['something after the end', `${writeLink(demos[0]![1], everything)}AAAAAAAA`, /cut short or changed/],
    ['no JSON', linkWith(packed('not a job')), /not a job that can be read: \(file\)/],
    ['no job', linkWith(packed('{"format":"nookwright-job","version":1}')), /not a job that can be read: readings/],
    [
      'a wrong value',
      linkWith(packed(JSON.stringify({ ...demos[0]![1], levelAboveFloor: 5 }))),
      /levelAboveFloor must be at least/,
    ],
    ['an unknown key', linkWith(packed(JSON.stringify({ ...demos[0]![1], script: 1 }))), /script is not a known key/],
    ['nested brackets', linkWith(packed('['.repeat(500_000))), /not a job that can be read/],
  ])('refuses %s with a sentence', (_, link, words) => {
    expect(refusal(link)).toMatch(words);
    expect(refusal(link)).toMatch(/^[A-Z].*\.$/s);
  });
});
