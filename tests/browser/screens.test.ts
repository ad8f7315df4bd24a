import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { goTo, openApp } from './app';

const sizes = [
  { width: 390, height: 844 },
  { width: 1024, height: 768 },
  { width: 1440, height: 900 },
];
const places = [
  '#site/readings',
  '#site/scan',
  '#site/truth',
  '#site/holes',
  '#site/basics',
  '#bench/back',
  '#bench/right',
  '#bench/trim.top',
  '#bench/legs.left',
  '#bench/shelves',
  '#bench/sheets',
  '#bench/beds.back',
  '#bench/ways.back',
  '#van/materials',
  '#van/work',
  '#van/pieces',
  '#client/look',
  '#client/choices',
  '#client/price',
  '#client/send',
];

for (const size of sizes) {
  for (const place of places) {
    test(`${place} at ${size.width} × ${size.height}: accessible, nothing cut off, large enough to touch`, async ({
      page,
    }) => {
      await page.setViewportSize(size);
      await openApp(page, place);
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);

      const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
      expect(wide).toBeLessThanOrEqual(0);

      const small = await page
        .locator(
          'button:visible, a[href]:visible, select:visible, textarea:visible, input:visible:not([type=checkbox])',
        )
        .evaluateAll((elements) =>
          elements
            .filter(
              (element) =>
                element.getBoundingClientRect().height < 43.5 && element.textContent !== 'Skip to the content',
            )
            .map((element) => element.outerHTML.slice(0, 120)),
        );
      expect(small).toEqual([]);
    });
  }
}

/** Phones, tablets and laptops, upright and lying; 320 px is a page at 400 % (WCAG 2.2, 1.4.10). */
const widths = [320, 360, 480, 720, 820, 901, 1180, 1280, 1401, 1681];

test('at every width nothing scrolls sideways, and the bar on top is all there', async ({ page }) => {
  test.setTimeout(600_000);
  await openApp(page);
  const cut: string[] = [];
  for (const place of ['#jobs', '#guide/method', ...places]) {
    await goTo(page, place);
    await expect(page.locator('main').getByRole('heading', { level: 2 }).first()).toBeVisible();
    for (const width of widths) {
      await page.setViewportSize({ width, height: 800 });
      const beyond = await page.evaluate(() => {
        const bar = [...document.querySelectorAll('header button, header input, header a')];
        const out = bar.filter((element) => element.getBoundingClientRect().right > window.innerWidth + 0.5);
        return document.documentElement.scrollWidth > window.innerWidth || out.length > 0;
      });
      if (beyond) cut.push(`${place} at ${width}`);
    }
  }
  expect(cut).toEqual([]);
});

test('on a phone the parts of Site stand first, and a form of one right under them', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page, '#site/readings');
  for (const [part, first] of [
    ['Holes', page.getByRole('button', { name: 'Add a fixture' })],
    ['Tub and tools', page.getByRole('textbox', { name: 'Level line above the floor' })],
  ] as const) {
    await page.getByRole('tab', { name: part }).click();
    await expect(first).toBeInViewport();
    await expect(page.getByRole('tab', { name: 'Readings' })).toBeInViewport();
  }
});
