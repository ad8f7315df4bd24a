import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { goTo, openApp, valueField } from './app';
import { coloursOf } from './colours';

const flatPicture = 'The finished alcove, a plain picture';

test('a panel is picked on the drawing and by keyboard, and leads to its template', async ({ page }) => {
  await openApp(page);
  const stage = page.getByTestId('alcove');
  await expect.poll(() => coloursOf(stage.locator('canvas')), { timeout: 30_000 }).toBeGreaterThan(20);
  await stage.scrollIntoViewIfNeeded();
  const box = await stage.boundingBox();
  if (!box) throw new Error('the drawing has no place');
  await stage.click({ position: { x: box.width * 0.45, y: box.height * 0.35 } });
  await expect(page.getByRole('status').filter({ hasText: 'Back panel' })).toBeVisible();
  await page.getByRole('radio', { name: 'Back' }).focus();
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('radio', { name: 'Right' })).toBeFocused();
  await page.keyboard.press('Space');
  await expect(page.getByRole('status').filter({ hasText: 'Right side panel' })).toBeVisible();
  await page.getByRole('link', { name: 'See its template' }).click();
  await expect(page.getByRole('heading', { level: 2, name: /^Right side panel/ })).toBeVisible();
});

test('the slider says by how much the drawing exaggerates', async ({ page }) => {
  await openApp(page);
  const slider = page.getByRole('slider', { name: /^Out of true/ });
  await slider.fill('12');
  await expect(page.getByText('out of true × 12')).toBeVisible();
  await expect(slider).toHaveAttribute('aria-valuetext', /^12 times/);
  await slider.fill('1');
  await expect(page.getByText('drawn true')).toBeVisible();
});

test('a lost drawing says so under a flat picture, comes back by itself once, then when it is asked for', async ({
  page,
}) => {
  await openApp(page);
  const canvas = page.getByTestId('alcove').locator('canvas');
  const drawn = () => expect.poll(() => coloursOf(canvas), { timeout: 30_000 }).toBeGreaterThan(20);
  const lose = () =>
    canvas.evaluate((element: HTMLCanvasElement) =>
      element.getContext('webgl2')?.getExtension('WEBGL_lose_context')?.loseContext(),
    );
  await drawn();
  await lose();
  await expect(page.getByText(/The 3D drawing stopped/)).toBeVisible();
  await expect(page.getByTestId('alcove').getByRole('img', { name: flatPicture })).toBeVisible();
  await expect(page.getByText(/The 3D drawing stopped/)).toHaveCount(0);
  await drawn();
  await lose();
  await expect(page.getByText(/The 3D drawing stopped/)).toBeVisible();
  await page.waitForTimeout(3000);
  await page.getByRole('button', { name: 'Draw it again' }).click();
  await expect.poll(() => coloursOf(canvas), { timeout: 30_000 }).toBeGreaterThan(20);
});

test('without WebGL a flat picture stands in, and the rest works', async ({ page }) => {
  await page.addInitScript(() => {
    const get = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : Reflect.apply(get, this, [kind, ...rest]);
    } as typeof get;
  });
  await openApp(page);
  await expect(page.getByText(/cannot draw in 3D/)).toBeVisible();
  await expect(page.getByTestId('alcove').getByRole('img', { name: flatPicture })).toBeVisible();
  await valueField(page, 'corner-left-1').fill('29');
  await page.getByRole('link', { name: /^Bench/ }).click();
  await expect(page.getByTestId('template')).toBeVisible();
  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: /SVG$/ }).click();
  expect(await readFile(await (await saving).path(), 'utf8')).toContain('<svg');
  await goTo(page, '#client/look');
  await expect(page.getByTestId('finished').getByRole('img', { name: flatPicture })).toBeVisible();
});
