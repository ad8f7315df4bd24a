import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { guidePages, pageNames } from '../../src/guide';
import { atHand, goTo, openApp } from './app';
import { watch } from './watch';

test.use({ serviceWorkers: 'allow' });

const sizes = [
  { width: 390, height: 844 },
  { width: 1024, height: 768 },
  { width: 1440, height: 900 },
];

/** Opens a page of the guide and waits for its text. */
async function openGuide(page: Page, hash: string): Promise<void> {
  await page.goto(`./${hash}`);
  await expect(page.locator('article').first()).toBeVisible();
}

for (const size of sizes) {
  test(`every page of the guide at ${size.width} is accessible, in order, and nothing is cut off`, async ({
    page,
    baseURL,
  }) => {
    const seen = watch(page, baseURL ?? '');
    await page.setViewportSize(size);
    for (const name of pageNames) {
      await openGuide(page, `#guide/${name}`);
      await goTo(page, `#guide/${name}`);
      await expect(page.getByRole('navigation', { name: 'Pages of the guide' }).locator('[aria-current]')).toHaveText(
        guidePages[name].words,
      );
      await expect(page.locator(`h2#${name}`)).toBeVisible();
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id, nodes }) => [name, id, nodes.map(({ target }) => target)])).toEqual([]);
      expect(
        await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth),
        name,
      ).toBeLessThanOrEqual(0);
      const levels = await page
        .locator('main')
        .getByRole('heading')
        .evaluateAll((all) => all.map(({ tagName }) => Number(tagName[1])));
      levels.forEach((level, i) => expect(level, name).toBeLessThanOrEqual((levels[i - 1] ?? 1) + 1));
      const broken = await page
        .locator('article img')
        .evaluateAll((all) =>
          (all as HTMLImageElement[]).filter((img) => img.complete && img.naturalWidth === 0).map(({ alt }) => alt),
        );
      expect(broken).toEqual([]);
    }
    expect(seen.errors).toEqual([]);
    expect(seen.strangers).toEqual([]);
  });
}

test('from a screen the guide opens at what it shows, and the way back leads there', async ({ page }) => {
  await openApp(page, '#bench/beds.back');
  await page.getByRole('link', { name: 'Guide', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'How it sits', level: 3 })).toBeFocused();
  await expect(page).toHaveTitle('At the saw · Nookwright');
  await page.goBack();
  await expect(page).toHaveURL(/#bench\/beds\.back$/);
});

test('the guide with its pictures is at hand with the network off', async ({ page, context }) => {
  await openApp(page);
  await atHand(page);
  await context.setOffline(true);
  await goTo(page, '#guide/bench');
  await expect(page.getByRole('heading', { name: 'At the saw', level: 2 })).toBeVisible();
  const picture = page.locator('article img').first();
  await expect.poll(() => picture.evaluate((img: HTMLImageElement) => img.naturalWidth)).toBeGreaterThan(300);
});

test('the whole guide is printed without the app around it', async ({ page }) => {
  await openGuide(page, '#guide/all');
  await expect(page.locator('article')).toHaveCount(pageNames.filter((name) => guidePages[name].user).length);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('navigation', { name: 'Pages of the guide' })).toBeHidden();
  await expect(page.locator('header')).toBeHidden();
  await expect(page.getByRole('button', { name: 'Print the guide' })).toBeHidden();
});
