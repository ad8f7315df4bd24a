import { expect, type Page, test } from '@playwright/test';
import { atHand, goTo, valueField } from './app';
import { servedCopy } from './servedCopy';
import { watch } from './watch';

test.use({ serviceWorkers: 'allow' });

type Marked = Window & { sameDocument?: boolean };

/** Opens the app, begins an entry on it, and has another tab bring a build in of which no file is the same. */
async function replacedWhileTyping(page: Page, served: Awaited<ReturnType<typeof servedCopy>>): Promise<void> {
  await page.goto(served.address);
  await atHand(page);
  await page.evaluate(() => {
    (window as Marked).sameDocument = true;
  });
  await valueField(page, 'corner-left-1').fill('28 1/');
  await served.publishAllNew('next');
  // What the button of another tab does: this page has not asked for it.
  await page.evaluate(async () => {
    const known = await navigator.serviceWorker.ready;
    const taken = new Promise((done) =>
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
    );
    await known.update();
    while (!known.waiting) await new Promise((soon) => setTimeout(soon, 100));
    known.waiting.postMessage({ type: 'SKIP_WAITING' });
    await taken;
  });
}

test('an update from another tab interrupts no entry, and parts that load later still come', async ({ page }) => {
  const served = await servedCopy();
  try {
    const watched = watch(page, served.address);
    await replacedWhileTyping(page, served);
    const field = valueField(page, 'corner-left-1');
    // Longer than the notice waits for a pause; it waits for the field to be left.
    await page.waitForTimeout(9000);
    await expect(field).toBeFocused();
    await expect(field).toHaveValue('28 1/');
    const notice = page.getByText(/A newer Nookwright was loaded in another tab/);
    await expect(notice).toHaveCount(0);
    await page.keyboard.type('4');
    await field.blur();
    await expect(notice).toBeVisible();
    await page.getByRole('button', { name: 'Later' }).click();
    await expect(notice).toHaveCount(0);

    const scene = await page.evaluate(() => performance.getEntriesByType('resource').map(({ name }) => name));
    expect(scene.filter((name) => /\/assets\/(Client|client|pdf)-/.test(name))).toEqual([]);
    await goTo(page, '#client/look');
    await expect(page.locator('canvas').first()).toBeVisible();
    await goTo(page, '#bench/back');
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: /PDF/ }).first().click();
    expect((await downloading).suggestedFilename()).toMatch(/\.pdf$/);
    await goTo(page, '#site/readings');
    await expect(field).toHaveValue('28 1/4');
    expect(await page.evaluate(() => (window as Marked).sameDocument)).toBe(true);
    expect(watched.errors).toEqual([]);
    await page.reload();
    await expect(page.locator('[data-build="next"]')).toHaveCount(1);
    await expect(field).toHaveValue('28 1/4');
  } finally {
    await served.remove();
  }
});

test('where nothing is left of the older version, a sentence says so and the way on loses nothing', async ({
  page,
}) => {
  const served = await servedCopy();
  try {
    await replacedWhileTyping(page, served);
    await page.evaluate(async () => {
      for (const name of await caches.keys()) await caches.delete(name);
    });
    await goTo(page, '#client/look');
    const failed = page.getByRole('alert').filter({ hasText: 'a newer version may have come meanwhile' });
    await expect(failed.first()).toBeVisible();
    await failed.first().getByRole('button', { name: 'Load the page again' }).click();
    await expect(page.locator('[data-build="next"]')).toHaveCount(1);
    await goTo(page, '#site/readings');
    await expect(valueField(page, 'corner-left-1')).toHaveValue('28 1/');
  } finally {
    await served.remove();
  }
});
