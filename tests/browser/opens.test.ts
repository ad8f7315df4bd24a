import { expect, test } from '@playwright/test';
import { touch } from './app';
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
