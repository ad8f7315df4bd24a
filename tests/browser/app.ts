import { type Locator, type Page, expect as runnersExpect } from '@playwright/test';

/** Waits as long as the tests do, outside of the test runner too. */
export const expect = runnersExpect.configure({ timeout: 30_000 });

/** Templates and tables as text: all that the bench tells about the panels of a job. */
export async function benchWords(page: Page, panels = ['Left', 'Back', 'Right']): Promise<string[]> {
  const words: string[] = [];
  for (const panel of panels) {
    await goTo(page, `#bench/${panel.toLowerCase()}`);
    await expect(page.getByRole('heading', { level: 2, name: new RegExp(`^${panel}`) })).toBeVisible();
    words.push(...(await page.getByTestId('template').locator('text').allTextContents()));
    words.push(...(await page.getByRole('table').allTextContents()));
  }
  return words;
}

export async function goTo(page: Page, hash: string): Promise<void> {
  await page.evaluate((to) => {
    window.location.hash = to;
  }, hash);
}

/** The field of a reading's value. */
export const valueField = (page: Page, reading: string): Locator =>
  page.getByRole('textbox', { name: new RegExp(`^${reading}, .*: value$`) });

/** A first sign that somebody is there: what is large, such as the drawing in 3D, loads after it. */
export async function touch(page: Page): Promise<void> {
  await page.mouse.move(3, 3);
  await page.mouse.move(4, 4);
}

/** Opens the app and waits until the first job is worked out. */
export async function openApp(page: Page, hash = ''): Promise<void> {
  await page.goto(`./${hash}`);
  await touch(page);
  const ready = page.getByText(/The sheets cover the alcove|before anything is cut/);
  await expect(ready.or(page.getByRole('tablist', { name: 'For the client' })).first()).toBeVisible();
}

/** Waits until the browser keeps the draft as it stands. */
export async function kept(page: Page): Promise<void> {
  const menu = page.getByRole('button', { name: 'Job', exact: true });
  await menu.click();
  await expect(page.getByText('Kept in this browser as you type.')).toBeVisible();
  await page.keyboard.press('Escape');
  // Closing, the menu takes the focus back; what is typed before would go to it.
  await expect(menu).toBeFocused();
}

export async function jobMenu(page: Page, item: string | RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Job', exact: true }).click();
  await page.getByRole('menuitem', { name: item }).click();
}

/** Waits until the page's service worker answers for it, so that it works with the network off. */
export const atHand = (page: Page): Promise<void> =>
  page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (!navigator.serviceWorker.controller)
      await new Promise((done) => navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }));
  });
