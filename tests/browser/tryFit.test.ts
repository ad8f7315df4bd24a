import { expect, test } from '@playwright/test';
import { openApp } from './app';
import { watch } from './watch';

test('the templates are tried in the alcove, edge by edge, and the figures stay with the job they are of', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, '#bench/back');
  const card = page.getByRole('region', { name: 'Virtual dry fit' });
  await card.getByRole('button', { name: 'Try the templates in the alcove' }).click();
  await expect(card.getByRole('status')).toContainText(/none of \d+ edges and holes misses by more than 0\.10 mm/);
  const rows = card.getByRole('row').filter({ hasText: 'yes' });
  expect(await rows.count()).toBeGreaterThanOrEqual(3);
  await expect(page.getByTestId('alcove').getByText(/^left: fits, 0\.0\d mm$/)).toBeVisible();

  await page.getByLabel('Joint at the rim', { exact: true }).fill('5/16');
  await page.keyboard.press('Tab');
  await expect(card.getByRole('button', { name: 'Try the templates in the alcove' })).toBeVisible();
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});
