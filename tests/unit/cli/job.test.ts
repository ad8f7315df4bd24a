import { spawn } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import DxfParser from 'dxf-parser';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { jobInput } from '../output/fixture';

const root = resolve(import.meta.dirname, '../../..');
let place: string;
beforeAll(async () => {
  place = await mkdtemp(join(tmpdir(), 'job-run-'));
});
afterAll(() => rm(place, { recursive: true, force: true }));

interface Run {
  code: number | null;
  out: string;
  err: string;
}
const run = (...words: string[]) =>
  new Promise<Run>((done) => {
    const child = spawn(process.execPath, ['--import', 'tsx', 'src/cli/job.ts', ...words], { cwd: root });
    const said = { out: '', err: '' };
    child.stdout.on('data', (data) => (said.out += data));
    child.stderr.on('data', (data) => (said.err += data));
    child.on('close', (code) => done({ code, ...said }));
  });

const file = async (name: string, content: string) => {
  const path = join(place, name);
  await writeFile(path, content);
  return path;
};
const exists = (path: string) =>
  readdir(path).then(
    () => true,
    () => false,
  );

describe('npm run job', () => {
  it('writes the whole set and exits 0', async () => {
    const out = join(place, 'whole');
    const { code, err } = await run(await file('job.json', JSON.stringify(jobInput)), '--out', out);
    expect([code, err]).toEqual([0, '']);
    expect(await readdir(out, { recursive: true })).toEqual(
      expect.arrayContaining([
        'job-pack.pdf',
        'result.json',
        'survey-record.pdf',
        'templates',
        ...['back', 'left', 'right'].flatMap((name) => [`templates/${name}.dxf`, `templates/${name}.svg`]),
      ]),
    );
    const result = JSON.parse(await readFile(join(out, 'result.json'), 'utf8'));
    expect(result).toMatchObject({ format: 'nookwright-result', version: 1 });
    const dxf = new DxfParser().parseSync(await readFile(join(out, 'templates/left.dxf'), 'utf8'));
    const cut = dxf!.entities.find(({ layer }) => layer === 'cut') as unknown as {
      vertices: { x: number; y: number }[];
    };
    cut.vertices.forEach(({ x, y }, i) => {
      expect(Math.abs(-x - result.panels.left.flat.outline[i][0])).toBeLessThan(1e-4);
      expect(Math.abs(y - result.panels.left.flat.outline[i][1])).toBeLessThan(1e-4);
    });
    expect((await readFile(join(out, 'job-pack.pdf'))).subarray(0, 5).toString()).toBe('%PDF-');
  }, 120_000);

  it('writes the same bytes for the same job', async () => {
    const path = await file('same.json', JSON.stringify(jobInput));
    await Promise.all([run(path, '--out', join(place, 'one')), run(path, '--out', join(place, 'two'))]);
    for (const name of ['result.json', 'job-pack.pdf', 'templates/right.dxf', 'templates/right.svg']) {
      expect((await readFile(join(place, 'one', name))).equals(await readFile(join(place, 'two', name)))).toBe(true);
    }
  }, 120_000);

  it('exits 0 and prints a line per problem when the job cannot be built as it stands', async () => {
    const narrow = { ...jobInput, sheets: { ...jobInput.sheets, left: { width: 500, height: 2440 } } };
    const { code, out } = await run(await file('narrow.json', JSON.stringify(narrow)), '--out', join(place, 'narrow'));
    expect(code).toBe(0);
    expect(out).toMatch(/^problem: panels\.left: .*\(.*"\)$/m);
    const result = JSON.parse(await readFile(join(place, 'narrow/result.json'), 'utf8'));
    expect(out.split('\n').filter((line) => line.startsWith('problem: '))).toHaveLength(result.problems.length);
  }, 120_000);

  it('exits 2 with a line per fault and writes nothing', async () => {
    const readings = [
      ...jobInput.readings,
      { id: 'x', kind: 'span', height: 0, at: 600, value: 'wide' },
      { id: 'y', kind: 'angle', side: 'left', height: 0, value: 20 },
    ];
    const bad = await file('bad.json', JSON.stringify({ ...jobInput, readings, colour: 'red' }));
    const { code, out, err } = await run(bad, '--out', join(place, 'bad'));
    expect([code, out]).toEqual([2, '']);
    const lines = err.trimEnd().split('\n');
    const at = jobInput.readings.length;
    expect(lines.map((line) => line.split(': ')[0]).sort()).toEqual(
      ['colour', `readings[${at + 1}].value`, `readings[${at}].value`].sort(),
    );
    expect(await exists(join(place, 'bad'))).toBe(false);
  }, 60_000);

  it('exits 2 for a file that is no JSON, is missing, or for a call without a folder', async () => {
    const path = await file('broken.json', '{ "format": ');
    expect(await run(path, '--out', join(place, 'x'))).toMatchObject({
      code: 2,
      err: expect.stringMatching(/^\(file\): is not valid JSON/),
    });
    expect(await run(join(place, 'nowhere.json'), '--out', join(place, 'x'))).toMatchObject({
      code: 2,
      err: expect.stringContaining('does not exist'),
    });
    expect(await run(path)).toMatchObject({ code: 2, err: expect.stringContaining('Usage: ') });
    expect(await exists(join(place, 'x'))).toBe(false);
  }, 60_000);

  it('exits 1 with a sentence where the folder cannot be written, and leaves no half of a set', async () => {
    const path = await file('fine.json', JSON.stringify(jobInput));
    await mkdir(join(place, 'shelf'));
    await writeFile(join(place, 'shelf/in-the-way'), '');
    const { code, err } = await run(path, '--out', join(place, 'shelf/in-the-way'));
    expect(code).toBe(1);
    expect(err).toMatch(/^Nothing was written: .*a file, not a folder/);
    expect(await readdir(join(place, 'shelf'))).toEqual(['in-the-way']);
  }, 60_000);
});
