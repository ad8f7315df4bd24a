import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { goTo, openApp } from './app';
import { watch } from './watch';

async function savedText(page: Page, button: string): Promise<{ name: string; text: string }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: button }).click()]);
  return { name: file.suggestedFilename(), text: await readFile(await file.path(), 'utf8') };
}

test('what to buy follows the adhesive spacing, shows its rule, and is saved as CSV', async ({ page, baseURL }) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, '#van/materials');
  const row = page.getByRole('row').filter({ hasText: 'Panel adhesive' });
  const needed = row.getByRole('cell').first();
  const before = Number.parseInt((await needed.textContent()) ?? '', 10);
  await row.getByText('Panel adhesive').click();
  await expect(row.getByText(/clear of edges and holes/)).toBeVisible();

  const spacing = page.getByRole('textbox', { name: 'Spacing', exact: true });
  // Its text changes to an exact one on entry; what is typed still replaces it.
  await spacing.focus();
  await page.keyboard.type('8');
  await page.keyboard.press('Tab');
  await expect(spacing).toHaveValue('8');
  await expect.poll(async () => Number.parseInt((await needed.textContent()) ?? '', 10)).toBeLessThan(before / 2);

  const { name, text } = await savedText(page, 'Shopping list: CSV');
  expect(name).toMatch(/-shopping-list\.csv$/);
  expect(text).toContain(`panel adhesive,${await needed.textContent()}`);
  expect(watched.errors).toEqual([]);
  expect(watched.strangers).toEqual([]);
});

test('the calendar says that it needs a first day, and is made once there is one', async ({ page }) => {
  await openApp(page, '#van/work');
  await expect(page.getByRole('region', { name: 'Day 1' })).toContainText('Shut off water and power');
  await page.getByRole('button', { name: 'Calendar: iCalendar' }).click();
  await expect(page.getByText(/has no first day yet/)).toBeVisible();

  await page.getByLabel('First day').fill('2026-03-06');
  await expect(page.getByRole('region', { name: 'Fri 6 Mar' })).toContainText('Shut off water and power');
  const { name, text } = await savedText(page, 'Calendar: iCalendar');
  expect(name).toMatch(/-order-of-work\.ics$/);
  expect(text).toContain('DTSTART:20260306T080000');
  await expect(page.getByText(/has no first day yet/)).toHaveCount(0);
});

test('pieces carry their ±, and each number on a sheet stands in its list', async ({ page }) => {
  await openApp(page);
  await page.getByRole('link', { name: /^Van/ }).click();
  await page.getByRole('tab', { name: 'What to buy' }).press('End');
  const trim = page.getByRole('region', { name: 'Trim' });
  await expect(trim.getByRole('row').filter({ hasText: 'Top piece' })).toContainText('±');
  const sheet = page.getByRole('region', { name: /^Sheet 1 of/ });
  await expect(sheet.locator('svg text')).toHaveCount(await sheet.getByRole('listitem').count());
});

test('every wet joint is judged by its movement, and one that moves too far is a problem', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page, '#van/materials');
  const joints = page.getByRole('region', { name: 'Joints', exact: true });
  const rim = joints.getByRole('row').filter({ hasText: 'Rim under the back panel' });
  await expect(rim).toContainText(/\d\.\d{3} in: \d+ %/);
  await expect(page.getByText(/moves by more than its sealant/)).toHaveCount(0);

  await page.getByLabel('At most, 10⁻⁶ per °F').fill('42');
  await page.keyboard.press('Tab');
  await expect(rim).toContainText(/0\.\d{3} to \d\.\d{3} in: \d{3} %, too much/);
  await expect(joints).toContainText('grows 16.7 to 42 × 10⁻⁶ per °F');
  await expect(page.getByText(/moves by more than its sealant/).first()).toBeVisible();

  await page.getByLabel('Sealant moves, of its width').fill('100');
  await page.keyboard.press('Tab');
  await expect(page.getByText(/moves by more than its sealant/)).toHaveCount(0);
  expect(watched.errors).toEqual([]);
});

test('temperatures go by the degree that belongs to the unit of lengths, and what is typed stays', async ({ page }) => {
  await openApp(page, '#van/work');
  const order = page.getByRole('region', { name: 'Order of work' });
  await expect(order).toContainText('at 69.8 °F');
  const fahrenheit = page.getByLabel('Temperature, °F');
  await expect(fahrenheit).toHaveValue('69.8');
  await fahrenheit.fill('150');
  await fahrenheit.blur();
  await expect(page.getByText('must be at most 113 °F; found 150 °F')).toBeVisible();
  await expect(fahrenheit).toHaveValue('150');
  await expect(order).toContainText('at 69.8 °F');
  await fahrenheit.fill('50');
  await fahrenheit.blur();
  await expect(fahrenheit).toHaveValue('50');
  await expect(order).toContainText('at 50 °F');
  await page.getByRole('radio', { name: 'mm' }).click();
  await expect(page.getByLabel('Temperature, °C')).toHaveValue('10');
  await expect(order).toContainText('at 10 °C');
  await expect(page.getByText('°F')).toHaveCount(0);
  await goTo(page, '#van/materials');
  await expect(page.getByLabel('Change of temperature, °C')).toHaveValue('15');
  await expect(page.getByLabel('Sheet grows, 10⁻⁶ per °C')).toHaveValue('30');
});
