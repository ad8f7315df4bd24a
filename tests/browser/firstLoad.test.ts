import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { expect, type Page, test } from '@playwright/test';
import { parseJobText } from '../../src/core';
import { writeLink } from '../../src/output/share';
import { touch } from './app';

/** The most compressed script that may be fetched before anybody touches the page, bytes. */
const MOST = 350_000;

test.use({ serviceWorkers: 'block' });

/** Bytes of script, gzipped, that opening an address fetches until nothing more comes. */
async function scriptOnOpening(page: Page, address: string): Promise<{ bytes: number; files: string[] }> {
  const sizes: Promise<[string, number]>[] = [];
  page.on('response', (response) => {
    const name = new URL(response.url()).pathname;
    if (name.endsWith('.js')) sizes.push(response.body().then((body) => [name, gzipSync(body, { level: 9 }).length]));
  });
  await page.goto(address);
  await expect(page.getByRole('img', { name: 'The finished alcove, a plain picture' })).toBeVisible();
  await page.waitForLoadState('networkidle');
  const fetched = await Promise.all(sizes);
  return { bytes: fetched.reduce((sum, [, size]) => sum + size, 0), files: fetched.map(([name]) => name) };
}

test('opening the app fetches little script, and the 3D drawing only once somebody is there', async ({ page }) => {
  const { bytes, files } = await scriptOnOpening(page, './');
  expect(files.some((name) => /worker/.test(name))).toBe(true);
  expect(files.filter((name) => /scene/.test(name))).toEqual([]);
  expect(bytes).toBeGreaterThan(100_000);
  expect(bytes).toBeLessThanOrEqual(MOST);
  await expect(page.locator('canvas')).toHaveCount(0);
  await touch(page);
  await expect(page.locator('canvas').first()).toBeVisible();
});

test('opening a link fetches no more', async ({ page }) => {
  const parsed = parseJobText(readFileSync(new URL('../../scenes/nearly-true.json', import.meta.url), 'utf8'));
  if (!parsed.ok) throw new Error('the demo does not parse');
  const { bytes } = await scriptOnOpening(
    page,
    `./#${writeLink(parsed.job, { prices: true, client: true, notes: true })}`,
  );
  expect(bytes).toBeLessThanOrEqual(MOST);
});
