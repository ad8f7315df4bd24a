import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { parseJobText } from '../../src/core';
import { writeLink } from '../../src/output/share';
import { touch } from './app';
import { MOST_SCRIPT, scriptOnOpening } from './scriptOnOpening';

test.use({ serviceWorkers: 'block' });

test('opening the app fetches little script, and the 3D drawing only once somebody is there', async ({ page }) => {
  const { bytes, files } = await scriptOnOpening(page, './');
  expect(files.some((name) => /worker/.test(name))).toBe(true);
  expect(files.filter((name) => /scene/.test(name))).toEqual([]);
  expect(bytes).toBeGreaterThan(100_000);
  expect(bytes).toBeLessThanOrEqual(MOST_SCRIPT);
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
  expect(bytes).toBeLessThanOrEqual(MOST_SCRIPT);
});
