import { expect, test } from '@playwright/test';
import { openApp } from './app';
import { coloursOf } from './colours';
import { watch } from './watch';

const open = '#site/truth';

test('a section is dragged along a wall by pointer, keys and slider, and tells its figures', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, open);
  const stage = page.getByTestId('heat');
  await expect.poll(() => coloursOf(stage.locator('canvas')), { timeout: 30_000 }).toBeGreaterThan(20);
  const handle = page.getByRole('slider', { name: 'Section through the back wall' });
  await expect(handle).toBeVisible();
  await expect(handle).toHaveAttribute('aria-valuenow', '50');
  await handle.focus();
  await page.keyboard.press('PageUp');
  await expect(handle).toHaveAttribute('aria-valuenow', '60');
  await page.keyboard.press('End');
  await expect(handle).toHaveAttribute('aria-valuenow', '100');
  await expect(handle).toHaveAttribute('aria-valuetext', /right of the plumb line$/);
  const last = (await handle.boundingBox())!.x;
  await page.keyboard.press('Home');
  // it stands there with the next frame
  await expect.poll(async () => (await handle.boundingBox())!.x).toBeLessThan(last - 60);
  const box = (await handle.boundingBox())!;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x + 60, y + 5, { steps: 4 });
  await page.mouse.up();
  await expect.poll(async () => Number(await handle.getAttribute('aria-valuenow'))).toBeGreaterThan(10);
  await page.getByRole('radio', { name: 'Level' }).click();
  await page.getByRole('slider', { name: /^Section .*level line/ }).fill('80');
  await expect(handle).toHaveAttribute('aria-valuenow', '80');
  await expect(page.getByRole('img', { name: /^Back wall, level section .* furthest out .*±/ })).toBeVisible();
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('the verdicts follow the tolerances picked, their source beside them, and undo', async ({ page }) => {
  await openApp(page, open);
  const back = page.getByRole('region', { name: /^Back wall: / });
  await expect(back).toHaveAccessibleName('Back wall: prepare first');
  await page.getByRole('combobox', { name: 'Judged by' }).selectOption('finished');
  await expect(back).toHaveAccessibleName('Back wall: scribe');
  await expect(page.getByText(/Source: DIN 18202, table 2/)).toBeVisible();
  await page.getByText('Limits of your own').click();
  await page.getByRole('textbox', { name: 'Flat, under a straightedge' }).fill('1/16');
  await page.keyboard.press('Tab');
  await expect(back).toHaveAccessibleName('Back wall: prepare first');
});

test('without WebGL the section and the verdicts work', async ({ page }) => {
  await page.addInitScript(() => {
    const get = HTMLCanvasElement.prototype.getContext;
    HTMLCanvasElement.prototype.getContext = function (this: HTMLCanvasElement, kind: string, ...rest: unknown[]) {
      return kind.startsWith('webgl') ? null : Reflect.apply(get, this, [kind, ...rest]);
    } as typeof get;
  });
  await openApp(page, open);
  await expect(page.getByText(/cannot draw in 3D/)).toBeVisible();
  await page.getByRole('slider', { name: /^Section/ }).fill('30');
  await expect(page.getByRole('img', { name: /^Back wall, upright section/ })).toBeVisible();
});

test('the survey record is made on paper', async ({ page }) => {
  await openApp(page, open);
  const made = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Filled survey record: PDF' }).click();
  expect((await made).suggestedFilename()).toMatch(/-survey-record\.pdf$/);
});
