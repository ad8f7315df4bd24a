import { expect, type Page, test } from '@playwright/test';
import { openApp } from './app';

/*
 * Pictures of the finished alcove against kept ones. Only what is drawn in 3D is compared: no words, whose fonts differ
 * from machine to machine. `npx playwright test -c tests/browser/playwright.config.ts clientPictures --update-snapshots`
 * keeps new ones; look at them before they are committed.
 */
test.use({ contextOptions: { reducedMotion: 'reduce' } });
// Drawn in software, each of these pictures takes seconds.
test.slow();

/** Edges and rounding differ a little between browsers; a finish or a viewpoint changes far more. */
const tolerance = { threshold: 0.08, maxDiffPixelRatio: 0.02, timeout: 150_000 };
const drawing = (page: Page) => page.getByTestId('finished').locator('canvas');

for (const [name, width, height] of [
  ['phone', 390, 844],
  ['tablet', 1024, 768],
  ['desktop', 1440, 900],
] as const) {
  test(`the finished alcove looks as kept on a ${name}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openApp(page, '#client/look');
    await expect(drawing(page)).toHaveScreenshot(`look-${name}.png`, tolerance);
  });
}

test('choices side by side look as kept', async ({ page }) => {
  await page.setViewportSize({ width: 1024, height: 768 });
  await openApp(page, '#client/choices');
  await expect(page.getByTestId('finished')).toHaveAttribute('data-count', '3', { timeout: 60_000 });
  await expect(drawing(page)).toBeVisible({ timeout: 60_000 });
  // The names over the views are words.
  await page
    .getByTestId('finished')
    .locator('[aria-hidden="true"]')
    .evaluateAll((names) => {
      for (const name of names) if (name instanceof HTMLElement) name.style.visibility = 'hidden';
    });
  await expect(drawing(page)).toHaveScreenshot('choices.png', tolerance);
});

type Act = (page: Page) => Promise<void>;
const click =
  (role: 'button' | 'radio', name: string): Act =>
  (page) =>
    page.getByRole(role, { name, exact: true }).click();
const tall =
  (mm: string): Act =>
  (page) =>
    page.getByRole('slider', { name: /By a person/ }).fill(mm);

const changes: readonly { what: string; change: Act; back: Act }[] = [
  { what: 'another finish', change: click('button', 'Chalk'), back: click('button', 'Saltpan') },
  { what: 'another viewpoint', change: click('radio', 'At eye height'), back: click('radio', 'From the door') },
  { what: 'a taller person', change: tall('1950'), back: tall('1700') },
];

test('a changed picture is not taken for the kept one', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page, '#client/look');
  await expect(drawing(page)).toHaveScreenshot('look-phone.png', tolerance);
  for (const { what, change, back } of changes) {
    await test.step(what, async () => {
      await change(page);
      await expect(drawing(page)).not.toHaveScreenshot('look-phone.png', tolerance);
      await back(page);
      await expect(drawing(page)).toHaveScreenshot('look-phone.png', tolerance);
    });
  }
});
