import { describe, expect, it } from 'vitest';
import { parseArguments } from '../../../src/cli/arguments';

const message = (...words: string[]) => {
  const parsed = parseArguments(words);
  return parsed.ok ? 'ok' : parsed.message.split('\n')[0];
};

describe('parseArguments', () => {
  it('takes a job file and a folder, in either order', () => {
    const expected = { ok: true, arguments: { job: 'a.json', out: 'dir' } };
    expect(parseArguments(['a.json', '--out', 'dir'])).toEqual(expected);
    expect(parseArguments(['--out=dir', 'a.json'])).toEqual(expected);
  });
  it('takes a paper and the side that is up', () => {
    expect(parseArguments(['a', '--out', 'b', '--paper', 'a3', '--up', 'back'])).toEqual({
      ok: true,
      arguments: { job: 'a', out: 'b', paper: 'a3', up: 'back' },
    });
  });
  it('says what is wrong, and how to call it', () => {
    expect(message('--out', 'b')).toBe('which job file?');
    expect(message('a.json')).toBe('where to? give a folder with --out');
    expect(message('a', 'b', '--out', 'c')).toBe('one job file at a time, but there are 2');
    expect(message('a', '--out', 'b', '--paper', 'a9')).toBe('unknown paper "a9"');
    expect(message('a', '--out', 'b', '--up', 'left')).toBe('--up takes face or back, not "left"');
    expect(message('a', '--out', 'b', '--fast')).toContain('--fast');
    expect(message('a', '--out')).not.toBe('ok');
    const parsed = parseArguments([]);
    expect(parsed.ok ? '' : parsed.message).toContain('Usage: npm run job -- JOB.json --out DIR');
  });
});
