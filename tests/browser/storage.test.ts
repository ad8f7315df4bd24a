import { readFileSync } from 'node:fs';
import { type BrowserContext, expect, type Page, test } from '@playwright/test';
import { goTo, kept, openApp, touch, valueField } from './app';

const field = (page: Page) => valueField(page, 'corner-left-1');
const nameOf = (page: Page) => page.getByRole('textbox', { name: 'Name of the job' });
const deletedRow = (page: Page, name: string) =>
  page.getByRole('list', { name: 'Deleted jobs' }).getByRole('listitem').filter({ hasText: name });

/** A page of the app's origin on which nothing runs. */
async function emptyPage(context: BrowserContext, baseURL: string): Promise<Page> {
  const page = await context.newPage();
  await page.route('**/empty', (route) => route.fulfill({ contentType: 'text/html', body: '<title>empty</title>' }));
  await page.goto(`${baseURL}empty`);
  return page;
}

/** Fills the room that the page has, with pieces that get smaller; gives the name of what stopped it. */
async function fillUp(): Promise<string> {
  const opening = indexedDB.open('ballast', 1);
  opening.onupgradeneeded = () => opening.result.createObjectStore('pieces', { autoIncrement: true });
  await new Promise((done) => Object.assign(opening, { onsuccess: done }));
  const put = (bytes: number) =>
    new Promise<string | null>((done) => {
      const piece = opening.result.transaction('pieces', 'readwrite');
      piece.objectStore('pieces').put(crypto.getRandomValues(new Uint8Array(bytes)));
      piece.oncomplete = () => done(null);
      piece.onabort = () => done(piece.error?.name ?? 'aborted');
    });
  let stopped: string | null = null;
  for (const bytes of [20_000, 5000, 1000, 100])
    do stopped = await put(bytes);
    while (stopped === null);
  opening.result.close();
  return stopped ?? '';
}

test('a device that is full is told, and what was typed is kept by itself once there is room', async ({
  page,
  context,
  baseURL,
}) => {
  const browser = await context.newCDPSession(page);
  const origin = new URL(baseURL ?? '').origin;
  await browser.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 400_000 });
  await openApp(page);
  await nameOf(page).fill('Full');
  await kept(page);
  expect(await page.evaluate(fillUp)).toBe('QuotaExceededError');
  await field(page).fill('28 1/4');
  await field(page).blur();
  await expect(page.getByText(/no room left on this device/)).toBeVisible();
  await browser.send('Storage.overrideQuotaForOrigin', { origin });
  await expect(page.getByText(/no room left on this device/)).toHaveCount(0);
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await expect(field(page)).toHaveValue(/28 1\/4/);
});

test('storage that is cleared under the page is filled again with the job in hand', async ({
  page,
  context,
  baseURL,
}) => {
  await openApp(page);
  await nameOf(page).fill('Cleared');
  await kept(page);
  const browser = await context.newCDPSession(page);
  await browser.send('Storage.clearDataForOrigin', { origin: new URL(baseURL ?? '').origin, storageTypes: 'all' });
  await field(page).fill('28 1/4');
  await field(page).blur();
  await expect(page.getByText(/not in the browser’s storage any more/)).toBeVisible();
  await kept(page);
  const next = await context.newPage();
  await page.close();
  await openApp(next);
  await expect(nameOf(next)).toHaveValue('Cleared');
  await expect(field(next)).toHaveValue(/28 1\/4/);
});

test('a newer version that takes the storage over is told; nothing that is typed gets lost', async ({
  page,
  context,
  baseURL,
}) => {
  await openApp(page);
  await nameOf(page).fill('Newer');
  await kept(page);
  const other = await emptyPage(context, baseURL ?? '');
  await other.evaluate(
    () =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('nookwright', 99);
        opening.onsuccess = () => done();
        opening.onerror = () => failed(opening.error);
      }),
  );
  await field(page).fill('28 1/4');
  await expect(page.getByText(/A newer version keeps the jobs now/)).toBeVisible();
  await expect(field(page)).toHaveValue('28 1/4');
});

test('a job that the first version kept opens, and goes on in this one', async ({ page, context, baseURL }) => {
  const record = JSON.parse(
    readFileSync(new URL('../unit/job/keep/kept-by-first-version.json', import.meta.url), 'utf8'),
  );
  const old = await emptyPage(context, baseURL ?? '');
  await old.evaluate(
    (job) =>
      new Promise<void>((done, failed) => {
        const opening = indexedDB.open('nookwright', 1);
        opening.onupgradeneeded = () => {
          opening.result.createObjectStore('jobs', { keyPath: 'id' }).put(job);
          opening.result.createObjectStore('pointers').put(job.id, 'current');
        };
        opening.onsuccess = () => {
          opening.result.close();
          done();
        };
        opening.onerror = () => failed(opening.error);
      }),
    record,
  );
  await old.close();
  await page.goto('./');
  await expect(nameOf(page)).toHaveValue(record.draft.job.name);
  await nameOf(page).fill('Carried over');
  await kept(page);
  await page.reload();
  await expect(nameOf(page)).toHaveValue('Carried over');
});

test('lasting storage is asked for once, when the first own job is kept', async ({ page }) => {
  await page.addInitScript(() => {
    const asked = { times: 0 };
    Object.assign(window, { asked });
    navigator.storage.persist = async () => ++asked.times > 0;
  });
  const asked = () => page.evaluate(() => (window as unknown as { asked: { times: number } }).asked.times);
  await openApp(page);
  expect(await asked()).toBe(0);
  await field(page).fill('28 1/4');
  await kept(page);
  expect(await asked()).toBe(1);
  await field(page).fill('28 1/2');
  await kept(page);
  expect(await asked()).toBe(1);
});

test('a clock that is set back or ahead loses no job and no keystroke; a deleted job goes after 30 days of use', async ({
  page,
}) => {
  const start = Date.UTC(2026, 4, 1, 9);
  const day = 86_400_000;
  await page.clock.setSystemTime(start);
  await openApp(page);
  await nameOf(page).fill('Wrong clock');
  await kept(page);
  await goTo(page, '#jobs');
  const more = page.getByRole('button', { name: 'More for Wrong clock' });
  await more.click();
  await page.getByRole('menuitem', { name: 'Copy' }).click();
  await page.getByRole('button', { name: 'More for Wrong clock (copy)' }).click();
  await page.getByRole('menuitem', { name: 'Delete' }).click();
  await expect(deletedRow(page, 'Wrong clock (copy)')).toContainText('30 days left');

  const visit = async (at: number) => {
    await page.clock.setSystemTime(at);
    await page.reload();
    await touch(page);
    await expect(page.getByRole('heading', { name: 'All jobs' })).toBeVisible();
  };
  // Ten years ahead, and forty back.
  for (const [at, reading] of [
    [start + 3650 * day, '28 1/4'],
    [start - 14_600 * day, '28 1/2'],
  ] as const) {
    await visit(at);
    await expect(deletedRow(page, 'Wrong clock (copy)')).toBeVisible();
    await goTo(page, '#site');
    await field(page).fill(reading);
    await field(page).blur();
    await kept(page);
    await goTo(page, '#jobs');
    await visit(at + 60_000);
    await goTo(page, '#site');
    await expect(field(page)).toHaveValue(new RegExp(reading));
    await goTo(page, '#jobs');
  }
  await expect(page.getByRole('list', { name: 'Jobs', exact: true })).toContainText('Wrong clock');
  for (const week of [1, 2, 3, 4]) await visit(start + 7 * week * day);
  await expect(deletedRow(page, 'Wrong clock (copy)')).toBeVisible();
  for (const week of [5, 6]) await visit(start + 7 * week * day);
  await expect(deletedRow(page, 'Wrong clock (copy)')).toHaveCount(0);
  await expect(page.getByRole('list', { name: 'Jobs', exact: true })).toContainText('Wrong clock');
});
