import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { writeFolder } from '../../../src/cli/writeFolder';

let place: string;
beforeEach(async () => {
  place = await mkdtemp(join(tmpdir(), 'write-folder-'));
});
afterEach(() => rm(place, { recursive: true, force: true }));

const files = (text: string) =>
  new Map(['result.json', 'templates/back.svg', 'job-pack.pdf'].map((path) => [path, new TextEncoder().encode(text)]));
const tree = async (folder: string) => (await readdir(folder, { recursive: true })).sort();
const text = (...path: string[]) => readFile(join(place, ...path), 'utf8');

describe('writeFolder', () => {
  it('makes the folder, parents included', async () => {
    await writeFolder(join(place, 'a/b/out'), files('one'));
    expect(await tree(join(place, 'a/b'))).toEqual([
      'out',
      'out/job-pack.pdf',
      'out/result.json',
      'out/templates',
      'out/templates/back.svg',
    ]);
    expect(await text('a/b/out/templates/back.svg')).toBe('one');
  });

  it('replaces an earlier set and leaves other files alone', async () => {
    await writeFolder(join(place, 'out'), files('one'));
    await writeFile(join(place, 'out/notes.txt'), 'mine');
    await writeFolder(join(place, 'out'), files('two'));
    expect(await text('out/result.json')).toBe('two');
    expect(await text('out/notes.txt')).toBe('mine');
    expect(await tree(join(place, 'out'))).toHaveLength(5);
  });

  it('puts everything back if one file cannot be moved into place', async () => {
    await writeFolder(join(place, 'out'), files('one'));
    await rm(join(place, 'out/templates'), { recursive: true });
    await writeFile(join(place, 'out/templates'), 'a file where the folder should be');
    await expect(writeFolder(join(place, 'out'), files('two'))).rejects.toThrow();
    expect(await text('out/result.json')).toBe('one');
    expect(await text('out/templates')).toBe('a file where the folder should be');
    expect(await tree(place)).toEqual(['out', 'out/job-pack.pdf', 'out/result.json', 'out/templates']);
  });

  it('leaves nothing behind where the folder cannot be made', async () => {
    await writeFile(join(place, 'file'), 'x');
    await expect(writeFolder(join(place, 'file/out'), files('one'))).rejects.toThrow();
    await expect(writeFolder(join(place, 'file'), files('one'))).rejects.toThrow();
    expect(await tree(place)).toEqual(['file']);
  });

  it('takes back the parents it made when the write fails', async () => {
    const blocked = new Map([
      ['a', new Uint8Array()],
      ['a/b', new Uint8Array()],
    ]);
    await expect(writeFolder(join(place, 'deep/er/out'), blocked)).rejects.toThrow();
    expect(await tree(place)).toEqual([]);
  });

  it('keeps a folder that has a file of the same name as one of its folders', async () => {
    await mkdir(join(place, 'out/result.json/sub'), { recursive: true });
    await writeFolder(join(place, 'out'), files('one'));
    expect(await text('out/result.json')).toBe('one');
  });
});
