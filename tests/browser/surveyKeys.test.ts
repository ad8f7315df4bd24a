import { expect, type Locator, type Page, test } from '@playwright/test';
import { plausibleAlcove } from '../simulate';
import { openApp } from './app';
import { entryOf, inHand, inSixteenths, openEntries, shownAt } from './entered';
import { watch } from './watch';

const alcove = plausibleAlcove(11);
/** Nobody plans more. */
const MOST = 140;
/** A screen has fewer stops of the Tab key than this. */
const STOPS = 250;

/** A menu that opens takes the focus once it is in its place, ms. */
const ON_ITS_WAY = 300;

/** Notes what had the focus last each time that nothing has it. */
async function watchFocus(page: Page): Promise<() => Promise<string[]>> {
  await page.evaluate((onItsWay) => {
    const lost: string[] = [];
    Object.assign(window, { lost });
    let had = 'nothing yet';
    let since: number | null = null;
    let told = false;
    const look = () => {
      const { activeElement } = document;
      if (activeElement && activeElement !== document.body) {
        had = activeElement.getAttribute('aria-label') ?? activeElement.textContent ?? activeElement.tagName;
        since = null;
        told = false;
      } else {
        since ??= performance.now();
        if (!told && performance.now() - since > onItsWay) {
          lost.push(had);
          told = true;
        }
      }
      requestAnimationFrame(look);
    };
    look();
  }, ON_ITS_WAY);
  return () => page.evaluate(() => (window as unknown as { lost: string[] }).lost);
}

const hasFocus = (target: Locator): Promise<boolean> =>
  target.evaluateAll((all) => all.some((element) => element === document.activeElement));

/** Presses Tab until one of the targets has the focus. */
async function tabTo(page: Page, target: Locator, key = 'Tab'): Promise<void> {
  for (let i = 0; i < STOPS; i++) {
    if (await hasFocus(target)) return;
    await page.keyboard.press(key);
    // A menu hands the focus on once the key is dealt with.
    await page.evaluate(() => new Promise((drawn) => requestAnimationFrame(() => setTimeout(drawn))));
  }
  throw new Error(`not reached by ${key}: ${target}`);
}

/** Opens the menu whose button has the focus and chooses in it. */
async function chooseByKeys(page: Page, name: string): Promise<void> {
  await page.keyboard.press('Enter');
  await expect(page.getByRole('menuitem').first()).toBeFocused();
  await tabTo(page, page.getByRole('menuitem', { name }), 'ArrowDown');
  await page.keyboard.press('Enter');
}

async function typeIn(page: Page): Promise<void> {
  await page.keyboard.type(inSixteenths(shownAt(alcove, await inHand(page))));
  await page.keyboard.press('Enter');
}

test('a whole survey, from a new job to the panels, by the keyboard alone; the focus is never lost', async ({
  page,
  baseURL,
}) => {
  test.setTimeout(480_000);
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  await tabTo(page, page.getByRole('button', { name: 'Job', exact: true }));
  const lost = await watchFocus(page);
  await chooseByKeys(page, 'New job');
  await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();

  await tabTo(page, page.getByRole('button', { name: 'Enter it' }));
  await page.keyboard.press('Enter');
  const tags = page.getByRole('toolbar').getByRole('button');
  for (let i = 0; i < MOST && (await entryOf(page).count()) > 0; i++) {
    await typeIn(page);
    if (i === 5) {
      // Away to the drawing and on from another place.
      const { where } = await inHand(page);
      await page.keyboard.press('Escape');
      await expect(entryOf(page)).toHaveCount(0);
      expect(await hasFocus(tags)).toBe(true);
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('Enter');
      expect((await inHand(page)).where).not.toEqual(where);
    }
    if (i === 9) {
      // Nothing entered here: on to the next number, and round again at the end.
      const { where, field } = await inHand(page);
      await tabTo(page, entryOf(page).getByRole('button', { name: 'Skip', exact: true }));
      await page.keyboard.press('Enter');
      expect(await inHand(page)).not.toEqual({ where, field });
    }
  }
  await expect(entryOf(page)).toHaveCount(0);
  expect(await openEntries(page)).toBe('All of the plan is read');
  expect(await hasFocus(tags)).toBe(true);

  // What was worked out since may ask for other places: the focus stays on the drawing.
  await expect(page.getByText(/The sheets cover the alcove|before anything is cut/).first()).toBeVisible();
  expect(await hasFocus(tags)).toBe(true);

  const bench = page.getByRole('link', { name: 'Bench' }).or(page.getByRole('tab', { name: 'Bench' }));
  await tabTo(page, bench.first(), 'Shift+Tab');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 2, name: /^Back/ })).toBeVisible();
  await tabTo(page, page.getByRole('button', { name: 'Job', exact: true }));
  const saved = page.waitForEvent('download');
  await chooseByKeys(page, 'Save as a job file');
  expect((await saved).suggestedFilename()).toMatch(/\.json$/);
  expect(await lost()).toEqual([]);
  expect(watched.errors).toEqual([]);
});
