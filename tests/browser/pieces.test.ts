import { expect, test } from '@playwright/test';
import { openApp } from './app';
import { watch } from './watch';

test('every kind of piece is on the bench with its template, marks and files', async ({ page, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, '#bench/back');
  const kinds = page.getByLabel('Kind of piece');
  for (const [kind, first] of [
    ['Trim', 'Top piece'],
    ['Legs and tub', 'Left leg'],
    ['Shelves', 'Shelf low'],
    ['Fillers', 'Filler behind the top piece'],
  ] as const) {
    await kinds.getByRole('radio', { name: new RegExp(`^${kind}`) }).click();
    await expect(page.getByRole('heading', { level: 2, name: first })).toBeVisible();
    await expect(page.getByTestId('template').locator('text').first()).toBeVisible();
    await expect(page.getByRole('table').first()).toContainText('±');
    await expect(page.getByRole('button', { name: `${first}: DXF` })).toBeEnabled();
  }
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('a butt joint changes the ends of the top piece, and undo brings the mitre back', async ({ page }) => {
  await openApp(page, '#bench/trim.top');
  const end = page.getByRole('region', { name: 'Left end' });
  await expect(end).toContainText('mitre;');
  await page.getByLabel('Joint at the corners').selectOption('butt');
  await expect(end).toContainText('butt');
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(end).toContainText('mitre;');
});

test('the plan of lengths is proven best, and says from which length a piece comes', async ({ page }) => {
  await openApp(page, '#bench/sheets');
  await expect(page.getByText('No other plan buys less.')).toBeVisible({ timeout: 30_000 });
  await expect(page.getByRole('region', { name: /^Length 1 of/ })).toContainText('Left over');
  const onHand = page.getByLabel('How many there are');
  await onHand.fill('1');
  await onHand.blur();
  await expect(page.getByText('From no length:')).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByRole('radio', { name: /^Trim/ }).click();
  await expect(page.getByText(/Cut from length \d of \d/)).toBeVisible({ timeout: 30_000 });
});

test('a shelf is added, told when too flat, and removed', async ({ page }) => {
  await openApp(page, '#bench/shelves');
  await page.getByRole('button', { name: 'Add a shelf' }).click();
  const added = page.getByRole('group', { name: 'Shelf 3' });
  await added.getByLabel('Fall to the room').fill('1/16');
  await expect(added).toContainText(/flat a shelf/);
  await added.getByRole('button', { name: 'Remove shelf 3' }).click();
  await expect(added).toHaveCount(0);
});

test('a contour is taken from a gauge’s points, and a line that is none is named', async ({ page }) => {
  await openApp(page, '#bench/legs');
  await page.locator('summary').filter({ hasText: 'From a contour gauge' }).click();
  const text = page.getByLabel(/^From a contour gauge/);
  await text.fill('0; 0\n1/2 -1/16 3\n');
  await page.getByRole('button', { name: 'Use these points' }).click();
  await expect(page.getByRole('alert').filter({ hasText: 'Line 2' })).toBeVisible();
  await text.fill('0; 0\n1/2; -1/16\n1; -1/2\n3/4; -4');
  await page.getByRole('button', { name: 'Use these points' }).click();
  await expect(page.getByRole('region', { name: 'Rim, rolling over' }).getByRole('listitem')).toHaveCount(3);
  await expect(page.getByRole('region', { name: 'Apron, below that' }).getByRole('listitem')).toHaveCount(1);
  await expect(page.getByRole('heading', { level: 2, name: 'Left leg' })).toBeVisible();
});
