import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { benchWords, goTo, jobMenu, kept, openApp, valueField } from './app';
import { coloursOf } from './colours';

test('an edit changes the template; undo and redo take it back and forth', async ({ page }) => {
  await openApp(page);
  const words = () => benchWords(page, ['Back']);
  const before = await words();
  await goTo(page, '#site');
  const field = valueField(page, 'corner-left-1');
  const was = await field.inputValue();
  await field.fill('27 1/2');
  await field.blur();
  await expect.poll(words).not.toEqual(before);
  const after = await words();

  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(words).toEqual(before);
  await page.keyboard.press('Control+Shift+z');
  await expect.poll(words).toEqual(after);
  await page.keyboard.press('Control+z');
  await goTo(page, '#site');
  await expect(field).toHaveValue(was);
});

test('a reading can be added, filled in, left out and removed', async ({ page }) => {
  await openApp(page);
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await page.getByRole('menuitem', { name: /^Wall to wall/ }).click();
  const row = page.locator('[data-reading]').filter({ hasText: 'Not used yet' });
  await expect(row).toHaveCount(1);
  const id = (await row.getAttribute('data-reading')) ?? '';
  const added = page.locator(`[data-reading="${id}"]`);
  await expect(added.getByRole('textbox', { name: 'height from the level line' })).toBeFocused();
  await page.keyboard.type('10');
  await page.keyboard.press('Enter');
  await page.keyboard.type('12');
  await page.keyboard.press('Enter');
  await page.keyboard.type('59 1/2');
  await page.keyboard.press('Enter');
  await expect(added).not.toContainText('Not used yet');
  await expect(added).toContainText(/agrees|fits|re-measure|nothing checks|may be wrong/);
  await added.getByRole('button', { name: `More for ${id}` }).click();
  await added.getByRole('button', { name: 'Leave it out' }).click();
  await expect(added).toContainText('left out');
  await added.getByRole('button', { name: 'Remove' }).click();
  await expect(added).toHaveCount(0);
});

test('a reading that cannot be right is named, with what it may have been', async ({ page }) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-2');
  await field.fill('30 1/16');
  await field.blur();
  const row = page.locator('[data-reading="corner-left-2"]');
  await expect(row).toContainText('re-measure this one');
  await expect(page.getByText(/Re-measure this one: corner-left-2/)).toContainText(/an inch/);
});

test('text that is not a length stays as typed over a reload, and is not used', async ({ page }) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-1');
  await field.fill('28 13/');
  await field.blur();
  const row = page.locator('[data-reading="corner-left-1"]');
  await expect(row).toContainText('Not used yet');
  await expect(field).toHaveAttribute('aria-invalid', 'true');
  await kept(page);
  await page.reload();
  await expect(field).toHaveValue('28 13/');
  await expect(row).toContainText('Not used yet');
  // On the drawing stands what is typed, not the number before it.
  const tag = page.getByRole('toolbar', { name: /^Places of the survey/ }).getByText('28 13/', { exact: true });
  await expect(tag).toBeVisible();
  await expect(page.getByRole('button', { name: /“28 13\/” not finished/ })).toHaveCount(1);
  await field.fill('28 13/16');
  await field.blur();
  await expect(row).not.toContainText('Not used yet');
  await expect(tag).toHaveCount(0);
});

test('a gap half typed stands in its place, and what is in hand can be read under the pointer too', async ({
  page,
}) => {
  await openApp(page, '#site/readings');
  const places = page.getByRole('toolbar', { name: /^Places of the survey/ });
  await places
    .getByRole('button', { name: /^Gaps to a hung line, .*: 4 gaps$/ })
    .first()
    .click();
  const entry = page.getByTestId('entry');
  const gaps = entry.getByRole('list', { name: 'Numbers of this place' }).getByRole('button');
  await gaps.nth(1).click();
  await entry.getByRole('textbox').fill('1 1/');
  await gaps.nth(0).click();
  await expect(gaps.nth(1)).toContainText('1 1/');
  await expect(places.getByRole('button', { name: /3 of 4 gaps, “1 1\/” not finished$/ })).toHaveCount(1);
  await gaps.nth(0).hover();
  const { violations } = await new AxeBuilder({ page })
    .include('[data-testid=entry]')
    .withRules(['color-contrast'])
    .analyze();
  expect(violations.flatMap(({ nodes }) => nodes.map(({ html }) => html))).toEqual([]);
});

test('units switch what is shown and read, not what was measured', async ({ page }) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-1');
  const inches = await field.inputValue();
  await page.getByRole('radio', { name: 'mm' }).click();
  await expect(field).toHaveValue(/^\d+\.\d$/);
  await page.getByRole('radio', { name: 'in', exact: true }).click();
  await expect(field).toHaveValue(inches);
});

test('a new job draws from no reading at all and says what is missing', async ({ page }) => {
  await openApp(page);
  await jobMenu(page, 'New job');
  await expect(page.getByText('Nothing to cut by yet.')).toBeVisible();
  await expect
    .poll(() => coloursOf(page.getByTestId('alcove').locator('canvas')), { timeout: 30_000 })
    .toBeGreaterThan(20);
  await page.getByRole('tab', { name: 'How true it is' }).click();
  await expect(page.getByRole('region', { name: 'Left wall', exact: true })).toContainText('not measured');
  await page.getByRole('tab', { name: 'Readings' }).click();
  await page.getByRole('button', { name: 'Enter it' }).click();
  await expect(page.getByTestId('entry')).toContainText('Level line to rim');
});
