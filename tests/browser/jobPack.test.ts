import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { fontsFromDisk } from '../../src/cli/fonts';
import { withStock } from '../../src/cli/withStock';
import { parseJobText, solve } from '../../src/core';
import { jobPackPdf } from '../../src/output';
import { type ReadPage, readPdf } from '../unit/output/pdf/readPdf';
import { openApp } from './app';

const SCENE = new URL('../../scenes/skewed-bowed-wet-wall.json', import.meta.url);

test('the job pack from the app is the one from the headless run: words, lines and paper of every page', async ({
  page,
}) => {
  test.setTimeout(180_000);
  await openApp(page, '#bench/right');
  await page.getByLabel('Paper').selectOption('a3');
  const download = page.waitForEvent('download', { timeout: 120_000 });
  await page.getByRole('button', { name: /^Whole job: PDF/ }).click();
  const fromApp = await readPdf(new Uint8Array(await readFile(await (await download).path())));

  const parsed = parseJobText(await readFile(SCENE, 'utf8'));
  if (!parsed.ok) throw new Error('the scene is no job');
  const made = await jobPackPdf(parsed.job, await withStock(solve(parsed.job), parsed.job), await fontsFromDisk(), {
    paper: 'a3',
  });
  const headless = await readPdf(made);

  expect(fromApp.length).toBe(headless.length);
  expect(headless.length).toBeGreaterThan(30);
  fromApp.forEach((one, index) => {
    const other = headless[index] as ReadPage;
    expect(one.text, `page ${index + 1}`).toBe(other.text);
    expect([one.width, one.height]).toEqual([other.width, other.height]);
    expect(one.paths.length).toBe(other.paths.length);
    const off = one.paths.map((path, k) =>
      Math.max(
        0,
        ...path.points.map(([x, y], n) => {
          const [ox, oy] = other.paths[k]?.points[n] ?? [Number.NaN, Number.NaN];
          return Math.hypot(x - ox, y - oy);
        }),
      ),
    );
    expect(Math.max(0, ...off)).toBeLessThan(0.01);
  });
});
