import { expect, type Page, test } from '@playwright/test';
import { openApp } from './app';
import { watch } from './watch';

const slider = (page: Page) => page.getByRole('slider', { name: /^Way in/ });

test('a panel is followed on its way in by slider, steps and keys, and the sizes on the way are judged', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, '#bench/ways.back');
  const card = page.getByRole('region', { name: 'Getting in: back panel' });
  await expect(
    card.getByText(/^Goes in turned by \d\.\d° about an upright line, (left|right) edge first\.$/),
  ).toBeVisible();
  await expect(card.getByText(/±.* free on each side/)).toBeVisible();
  await expect(page.getByTestId('way').locator('canvas')).toBeVisible();

  await slider(page).focus();
  await page.keyboard.press('End');
  await expect(slider(page)).toHaveAttribute('aria-valuetext', 'swung home');
  await expect(page.getByRole('img', { name: /Back panel on its way in: swung home/ })).toBeVisible();
  await page.keyboard.press('Home');
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /edge first, turned \d\.\d°$/);
  const steps = page.getByRole('list', { name: 'Steps of the way in' }).getByRole('button');
  await steps.nth(1).press('Enter');
  await expect(steps.nth(1)).toHaveAttribute('aria-current', 'step');
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /edge home, turned/);

  await page.getByLabel('Clear width', { exact: true }).fill('30');
  await page.getByLabel('Clear height', { exact: true }).fill('55');
  await page.keyboard.press('Tab');
  const carried = page.getByRole('region', { name: 'On the way to the alcove' });
  await expect(carried.getByRole('row').filter({ hasText: 'Back panel, cut' })).toContainText(
    /passes on its long edge, leaned/,
  );
  await page.getByLabel('Clear height', { exact: true }).fill('40');
  await page.keyboard.press('Tab');
  await expect(carried).toContainText(/Does not pass/);
  await expect(page.getByText(/before anything is cut/)).toBeVisible();
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('the way plays to its end by itself', async ({ page }) => {
  await openApp(page, '#bench/ways.left');
  await page.getByRole('button', { name: 'Play', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Stop', exact: true })).toBeVisible();
  await expect(slider(page)).toHaveAttribute('aria-valuetext', 'in its place', { timeout: 20_000 });
  await expect(page.getByRole('button', { name: 'Play again' })).toBeVisible();
});

test('where less motion is asked for, it goes step by step', async ({ page }) => {
  await page.emulateMedia({ reducedMotion: 'reduce' });
  await openApp(page, '#bench/ways.back');
  await expect(page.getByRole('button', { name: 'Play', exact: true })).toHaveCount(0);
  const next = page.getByRole('button', { name: 'Next step' });
  await next.click();
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /edge home, turned/);
  await next.click();
  await expect(slider(page)).toHaveAttribute('aria-valuetext', 'swung home');
  await page.getByRole('button', { name: 'From the start' }).click();
  await expect(slider(page)).toHaveAttribute('aria-valuetext', /edge first/);
});
