import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import scene from '../../scenes/nearly-true.json' with { type: 'json' };
import { goTo, jobMenu, kept, openApp, valueField } from './app';
import { watch } from './watch';

const field = (page: Page) => valueField(page, 'corner-left-1');
const nameOf = (page: Page) => page.getByRole('textbox', { name: 'Name of the job' });
const row = (page: Page, name: string) =>
  page
    .getByRole('list', { name: 'Jobs', exact: true })
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name, exact: true }) });
const nameJob = async (page: Page, name: string) => {
  await nameOf(page).fill(name);
  await nameOf(page).blur();
};

type Broken = Window & { broken?: 'database' | 'all' };

/** From then on every write of the database ends as one without room does: its transaction is aborted. */
async function breakable(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const here = window as Broken;
    const aborted = new WeakSet<IDBTransaction>();
    for (const name of ['put', 'add', 'delete'] as const) {
      const real = IDBObjectStore.prototype[name] as (...given: unknown[]) => IDBRequest;
      IDBObjectStore.prototype[name] = function (this: IDBObjectStore, ...given: unknown[]) {
        const request = real.apply(this, given);
        // Not at once: a page learns of it when it has asked for all that it wants.
        if (here.broken && !aborted.has(this.transaction)) {
          aborted.add(this.transaction);
          queueMicrotask(() => this.transaction.abort());
        }
        return request;
      } as never;
    }
    const note = Storage.prototype.setItem;
    Storage.prototype.setItem = function (key, text) {
      if (here.broken === 'all') throw new DOMException('no room', 'QuotaExceededError');
      note.call(this, key, text);
    };
  });
}
const breakDown = (page: Page, what: 'database' | 'all' | undefined) =>
  page.evaluate((broken) => {
    (window as Broken).broken = broken;
  }, what);

test('jobs that cannot be written are listed, opened, saved and never dropped while others are opened', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await breakable(page);
  await openApp(page);
  await nameJob(page, 'Typed before');
  await kept(page);
  await breakDown(page, 'database');
  await field(page).fill('28 1/4');
  await field(page).blur();
  await expect(page.getByText(/The browser did not keep the last changes/)).toBeVisible();

  await jobMenu(page, 'New job');
  await expect(page.getByText(/Not kept either.*Typed before/)).toBeVisible();
  await nameJob(page, 'Never written');
  await page.getByTestId('job-file').setInputFiles({
    name: 'given.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...scene, name: 'From a file' })),
  });
  await expect(nameOf(page)).toHaveValue('From a file');
  await expect(page.getByText(/Not kept either.*Typed before, Never written/)).toBeVisible();

  await jobMenu(page, 'All jobs');
  for (const name of ['Typed before', 'Never written', 'From a file']) await expect(row(page, name)).toBeVisible();
  await row(page, 'Never written').getByRole('button', { name: /^More/ }).click();
  await page.getByRole('menuitem', { name: 'Delete' }).click();
  await expect(page.getByText(/The last changes of this job are not kept yet/)).toBeVisible();
  await expect(row(page, 'Never written')).toBeVisible();
  await row(page, 'From a file').getByRole('button', { name: /^More/ }).click();
  await page.getByRole('menuitem', { name: 'Delete' }).click();
  await expect(row(page, 'From a file')).toContainText('In hand');

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all jobs in one file' }).click();
  const file = await readFile(await (await saving).path());
  await page.getByTestId('jobs-file').setInputFiles({ name: 'all.zip', mimeType: 'application/zip', buffer: file });
  const inFile = page.getByRole('dialog').getByRole('list', { name: 'Jobs in the file' });
  for (const name of ['Typed before', 'Never written', 'From a file']) await expect(inFile).toContainText(name);
  await page.getByRole('button', { name: 'Bring in 3 jobs' }).click();
  await expect(page.getByText(/The jobs are as they were/)).toBeVisible();
  await expect(row(page, 'From a file')).toHaveCount(1);

  await row(page, 'Typed before').getByRole('button', { name: /^Open/ }).click();
  await expect(field(page)).toHaveValue('28 1/4');
  await jobMenu(page, 'All jobs');
  await row(page, 'Never written').getByRole('button', { name: /^Open/ }).click();
  await expect(nameOf(page)).toHaveValue('Never written');

  await breakDown(page, undefined);
  // It is tried again by itself, at the latest after half a minute.
  await expect(page.getByText(/Not kept either|did not keep the last changes/)).toHaveCount(0, { timeout: 60_000 });
  await kept(page);
  // What the database has, without the notes beside it.
  await page.evaluate(() => localStorage.clear());
  await page.reload();
  await expect(nameOf(page)).toHaveValue('Never written');
  await goTo(page, '#jobs');
  for (const name of ['Never written', 'From a file']) await expect(row(page, name)).toHaveCount(1);
  await row(page, 'Typed before').getByRole('button', { name: /^Open/ }).click();
  await expect(field(page)).toHaveValue('28 1/4');
  expect(watched).toEqual({ errors: [], strangers: [] });
});

test('the browser asks before a page is left that alone has what was typed, and only then', async ({ page }) => {
  await breakable(page);
  await openApp(page);
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.type());
    void dialog.dismiss();
  });
  const leave = () => page.close({ runBeforeUnload: true });
  await breakDown(page, 'all');
  await field(page).click();
  await page.keyboard.type('28 1/4');
  await page.keyboard.press('Tab');
  await expect(page.getByText(/did not keep the last changes/)).toBeVisible();
  await leave();
  await expect.poll(() => asked).toEqual(['beforeunload']);
  await expect(field(page)).toHaveValue('28 1/4');
  await breakDown(page, undefined);
  await expect(page.getByText(/did not keep the last changes/)).toHaveCount(0);
  const closed = page.waitForEvent('close');
  await leave();
  await closed;
  expect(asked).toEqual(['beforeunload']);
});
