import { expect, test } from '@playwright/test';
import { atHand, goTo, openApp, valueField } from './app';
import { servedCopy } from './servedCopy';
import { watch } from './watch';

test.use({ serviceWorkers: 'allow' });

test('from the second visit on it works with the network off: places, templates, PDF', async ({ page }) => {
  const served = await servedCopy();
  try {
    const watched = watch(page, served.address);
    await page.goto(served.address);
    await atHand(page);
    await served.switchOff();
    for (const place of ['#bench/left', '#van/pieces', '#site/readings']) {
      await page.goto('about:blank');
      await page.goto(`${served.address}${place}`);
      await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible();
    }
    await page.mouse.move(200, 300);
    await expect(page.locator('canvas').first()).toBeVisible();
    await goTo(page, '#bench/back');
    const downloading = page.waitForEvent('download');
    await page.getByRole('button', { name: /PDF/ }).first().click();
    expect((await downloading).suggestedFilename()).toMatch(/\.pdf$/);
    expect(watched.strangers).toEqual([]);
    expect(watched.errors).toEqual([]);
  } finally {
    await served.remove();
  }
});

test('a newer version waits, does not interrupt an entry, and is loaded when asked', async ({ page }) => {
  const served = await servedCopy();
  try {
    await page.goto(served.address);
    await atHand(page);
    await served.publish('next');
    const field = valueField(page, 'corner-left-1');
    await field.fill('28 1/2');
    await page.evaluate(async () => void (await (await navigator.serviceWorker.ready).update()));
    await expect
      .poll(() => page.evaluate(async () => Boolean((await navigator.serviceWorker.ready).waiting)))
      .toBe(true);
    await page.waitForTimeout(9000);
    const notice = page.getByText(/A newer Nookwright is ready/);
    await expect(notice).toHaveCount(0);
    await expect(field).toBeFocused();
    await field.blur();
    await expect(notice).toBeVisible();
    await expect(page.locator('[data-build="next"]')).toHaveCount(0);
    await page.getByRole('button', { name: 'Load it now' }).click();
    await expect(page.locator('[data-build="next"]')).toHaveCount(1);
    await expect(field).toHaveValue(/28 1\/2/);
  } finally {
    await served.remove();
  }
});

test('says what a home screen needs, with icons of its own', async ({ page, baseURL }) => {
  await openApp(page);
  const address = await page.locator('link[rel=manifest]').getAttribute('href');
  const manifest = await (await page.request.get(new URL(address ?? '', baseURL).href)).json();
  expect(manifest).toMatchObject({ name: 'Nookwright', display: 'standalone', start_url: './' });
  for (const { src, sizes } of manifest.icons as { src: string; sizes: string }[]) {
    const icon = await page.request.get(new URL(src, baseURL).href);
    expect(icon.ok()).toBe(true);
    if (sizes === 'any') continue;
    const png = await icon.body();
    expect(`${png.readUInt32BE(16)}x${png.readUInt32BE(20)}`).toBe(sizes);
  }
});
