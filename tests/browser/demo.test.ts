import { expect, test } from '@playwright/test';
import { goTo, openApp, valueField } from './app';
import { coloursOf } from './colours';
import { watch } from './watch';

test('draws a demo, and goes on with the network off', async ({ page, context, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  const canvas = page.getByTestId('alcove').locator('canvas');
  await expect(canvas).toBeVisible();
  await expect.poll(() => coloursOf(canvas), { timeout: 30_000 }).toBeGreaterThan(20);
  await expect(page.getByTestId('alcove').getByText('level line')).toBeVisible();
  await expect(
    page
      .getByTestId('alcove')
      .getByText(/^sliver /)
      .first(),
  ).toBeVisible();

  await context.setOffline(true);
  await valueField(page, 'corner-left-1').fill('29');
  await goTo(page, '#bench/left');
  await expect(page.getByTestId('template').locator('text').first()).toBeVisible();
  await goTo(page, '#site/truth');
  await expect(page.getByRole('heading', { name: 'Left wall', exact: true })).toBeVisible();
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('offers at least three demo jobs, each of which opens and draws', async ({ page, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  await page.getByRole('button', { name: 'Job', exact: true }).click();
  const names = await page.getByRole('menuitem').allTextContents();
  const demos = names.slice(4);
  expect(demos.length).toBeGreaterThanOrEqual(3);
  await page.keyboard.press('Escape');
  for (const name of demos) {
    await page.getByRole('button', { name: 'Job', exact: true }).click();
    await page.getByRole('menuitem', { name, exact: true }).click();
    await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue(name);
    await expect
      .poll(() => coloursOf(page.getByTestId('alcove').locator('canvas')), { timeout: 30_000 })
      .toBeGreaterThan(20);
  }
  expect(watched.errors).toEqual([]);
});
