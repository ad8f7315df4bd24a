import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { benchWords, goTo, jobMenu, openApp, valueField } from './app';

const choose = (page: Page, name: string, text: string) =>
  page.getByTestId('job-file').setInputFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

const saved = async (page: Page): Promise<string> => {
  const download = page.waitForEvent('download');
  await jobMenu(page, 'Save as a job file');
  return readFile(await (await download).path(), 'utf8');
};

test('a saved job opens again to the same result', async ({ page }) => {
  await openApp(page);
  await valueField(page, 'corner-left-1').fill('28 3/4');
  await valueField(page, 'corner-left-1').blur();
  const name = await page.getByRole('textbox', { name: 'Name of the job' }).inputValue();
  const before = await benchWords(page);
  const text = await saved(page);
  await jobMenu(page, 'New job');
  await expect.poll(() => benchWords(page)).not.toEqual(before);
  await choose(page, 'saved.json', text);
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue(name);
  await expect.poll(() => benchWords(page)).toEqual(before);
  expect(await saved(page)).toBe(text);
});

test('a bad file lists every fault with its path and leaves the job in hand', async ({ page }) => {
  await openApp(page);
  const before = await benchWords(page);
  const job = JSON.parse(await saved(page));
  job.readings[3].value = 'wide';
  job.fit.bed = -4;
  job.colour = 'blue';
  await choose(page, 'bad.json', JSON.stringify(job));
  await expect(page.getByRole('heading', { name: 'bad.json was not opened' })).toBeVisible();
  const faults = page.getByRole('list', { name: 'Faults in the file' }).getByRole('listitem');
  await expect(faults).toHaveCount(3);
  for (const path of ['readings[3].value', 'fit.bed', 'colour'])
    await expect(faults.filter({ hasText: path })).toHaveCount(1);
  expect(await benchWords(page)).toEqual(before);
  await choose(page, 'cut.json', '{"format": "nookwright-job", ');
  await expect(page.getByRole('heading', { name: 'cut.json was not opened' })).toBeVisible();
  await page.getByRole('alert').getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('list', { name: 'Faults in the file' })).toHaveCount(0);
  expect(await benchWords(page)).toEqual(before);
});

test('focus returns from a notice to where it was, or to the main part where that is gone', async ({ page }) => {
  await openApp(page);
  const name = page.getByRole('textbox', { name: 'Name of the job' });
  const close = page.getByRole('alert').getByRole('button', { name: 'Close' });
  await name.focus();
  await choose(page, 'cut.json', '{"format": "nookwright-job", ');
  await close.focus();
  await close.press('Enter');
  await expect(name).toBeFocused();

  await goTo(page, '#site/readings');
  await page.getByRole('button', { name: 'Add a reading' }).focus();
  await choose(page, 'cut.json', '{"format": "nookwright-job", ');
  await close.focus();
  await page.evaluate(() => {
    window.location.hash = '#bench';
  });
  await expect(page.getByRole('button', { name: 'Add a reading' })).toHaveCount(0);
  await close.press('Enter');
  await expect(page.getByRole('main')).toBeFocused();
});

test('saving tells what is not finished and keeps it', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await page.getByRole('menuitem', { name: /^Diagonal/ }).click();
  const text = await saved(page);
  await expect(page.getByText(/without the one entry that is not finished/)).toBeVisible();
  expect(
    JSON.parse(text).readings.every(
      (reading: { value?: number; kind: string }) => reading.kind === 'plumb' || reading.value !== undefined,
    ),
  ).toBe(true);
  await expect(page.locator('[data-reading]').filter({ hasText: 'Not used yet' })).toHaveCount(1);
});

test('templates and the job pack download', async ({ page }) => {
  await openApp(page, '#bench/right');
  const file = async (name: string | RegExp) => {
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name }).click();
    const done = await download;
    return { name: done.suggestedFilename(), text: (await readFile(await done.path())).toString('latin1') };
  };
  const svg = await file(/SVG$/);
  expect(svg.name).toMatch(/-right\.svg$/);
  expect(svg.text).toContain('<svg');
  const dxf = await file(/DXF$/);
  expect(dxf.name).toMatch(/-right\.dxf$/);
  expect(dxf.text).toContain('$INSUNITS');
  const pdf = await file(/^Whole job: PDF/);
  expect(pdf.name).toMatch(/-job-pack\.pdf$/);
  expect(pdf.text.slice(0, 5)).toBe('%PDF-');
});

test('a failed export leaves the job untouched and says so', async ({ page, context }) => {
  await openApp(page, '#bench/right');
  const before = await benchWords(page);
  await goTo(page, '#bench/right');
  await context.setOffline(true);
  await page.getByRole('button', { name: /^Whole job: PDF/ }).click();
  await expect(page.getByText(/The job pack could not be made/)).toBeVisible();
  expect(await benchWords(page)).toEqual(before);
});
