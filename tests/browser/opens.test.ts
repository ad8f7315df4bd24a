import { expect, test } from '@playwright/test';
import { goTo, touch, valueField } from './app';
import { watch } from './watch';

test('opens on a demo alcove with no error and asks no other host', async ({ page, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await page.goto('./');
  await expect(page).toHaveTitle(/Nookwright/);
  await expect(page.locator('#root')).not.toBeEmpty();
  await expect(page.getByRole('img', { name: 'The finished alcove, a plain picture' })).toBeVisible();
  await touch(page);
  await expect(page.locator('canvas').first()).toBeVisible();
  await page.waitForLoadState('networkidle');
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('forbids scripts from another host', async ({ page }) => {
  await page.goto('./');
  const refused = await page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        document.addEventListener('securitypolicyviolation', (event) => resolve(event.effectiveDirective));
        const script = document.createElement('script');
        script.src = 'https://example.invalid/other.js';
        document.head.append(script);
      }),
  );
  expect(refused).toMatch(/^script-src/);
});

test('a part of the page whose file is gone says so, keeps what was typed, and comes when it is tried again', async ({
  page,
}) => {
  // As after an update that another page brought, or where the signal goes before a part was first shown.
  await page.route('**/assets/Jobs-*.js', (route) => route.abort());
  await page.route('**/assets/scene-*.js', (route) => route.abort());
  await page.goto('./');
  const failed = page.getByText(/could not be loaded or has failed/);
  await page.mouse.move(200, 300);
  await expect(failed).toBeVisible();
  await expect(page.getByRole('img', { name: 'The finished alcove, a plain picture' })).toBeVisible();
  const field = valueField(page, 'corner-left-1');
  await field.fill('28 1/4');
  await field.blur();
  await page.unrouteAll();
  await page.getByRole('button', { name: 'Try again' }).click();
  await expect(page.locator('canvas').first()).toBeVisible();
  await page.route('**/assets/Jobs-*.js', (route) => route.abort());
  await goTo(page, '#jobs');
  await expect(failed).toBeVisible();
  await goTo(page, '#site');
  await expect(field).toHaveValue(/28 1\/4/);
  await page.unrouteAll();
  await goTo(page, '#jobs');
  await expect(page.getByRole('heading', { name: 'All jobs' })).toBeVisible();
});
