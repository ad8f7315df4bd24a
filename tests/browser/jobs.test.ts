import { readFile } from 'node:fs/promises';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { goTo, jobMenu, openApp, valueField } from './app';
import { watch } from './watch';

const row = (page: Page, name: string, list = 'Jobs') =>
  page
    .getByRole('list', { name: list, exact: true })
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name, exact: true }) });
const more = async (page: Page, name: string, item: string) => {
  await row(page, name).getByRole('button', { name: /^More/ }).click();
  await page.getByRole('menuitem', { name: item }).click();
};
const nameJob = async (page: Page, name: string) => {
  await page.getByRole('textbox', { name: 'Name of the job' }).fill(name);
  await page.getByRole('textbox', { name: 'Name of the job' }).blur();
};

test('jobs are listed, found, copied, renamed, deleted, brought back and opened', async ({ page, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  await nameJob(page, 'Upstairs bath');
  await jobMenu(page, 'All jobs');
  await expect(row(page, 'Upstairs bath')).toContainText('In hand');
  await expect(row(page, 'Upstairs bath')).toContainText(/\d+ readings/);
  await more(page, 'Upstairs bath', 'Copy');
  await more(page, 'Upstairs bath (copy)', 'Rename');
  const field = page.getByRole('textbox', { name: 'New name' });
  await expect(field).toBeFocused();
  await field.fill('Guest shower');
  await page.keyboard.press('Enter');
  await page.getByRole('searchbox').fill('GUEST');
  await expect(row(page, 'Upstairs bath')).toHaveCount(0);
  await page.getByRole('searchbox').fill('');
  await more(page, 'Upstairs bath', 'Delete');
  await expect(row(page, 'Upstairs bath', 'Deleted jobs')).toHaveCount(1);
  await expect(page.getByRole('button', { name: 'Bring it back' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(row(page, 'Upstairs bath')).toHaveCount(1);
  const { violations } = await new AxeBuilder({ page })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
    .analyze();
  expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
  for (const [width, height] of [
    [390, 844],
    [1024, 768],
    [1440, 900],
  ] as const) {
    await page.setViewportSize({ width, height });
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
  }
  await row(page, 'Guest shower').getByRole('button', { name: /^Open/ }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue('Guest shower');
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('all jobs go into one file and come back with what was not understood, beside those that are here', async ({
  page,
}) => {
  await openApp(page);
  await nameJob(page, 'Half way');
  await valueField(page, 'corner-left-1').fill('28 13/');
  await valueField(page, 'corner-left-1').blur();
  await goTo(page, '#jobs');
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all jobs in one file' }).click();
  const file = await readFile(await (await saving).path());
  const bringIn = (buffer: Buffer) =>
    page.getByTestId('jobs-file').setInputFiles({ name: 'all.zip', mimeType: 'application/zip', buffer });
  await bringIn(file.subarray(0, 400));
  await expect(page.getByRole('dialog')).toContainText('cut short');
  await page.getByRole('button', { name: 'Close' }).click();
  await bringIn(file);
  await expect(page.getByRole('dialog').getByRole('list', { name: 'Jobs in the file' })).toContainText('Half way');
  await page.getByRole('button', { name: 'Bring in 1 job' }).click();
  await expect(row(page, 'Half way')).toHaveCount(2);
  await row(page, 'Half way').and(page.locator(':not([aria-current])')).getByRole('button', { name: /^Open/ }).click();
  await expect(valueField(page, 'corner-left-1')).toHaveValue('28 13/');
});
