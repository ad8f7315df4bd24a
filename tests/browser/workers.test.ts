import { expect, type Page, test, type Worker } from '@playwright/test';
import { goTo, jobMenu, kept, openApp, valueField } from './app';
import { scannedPly } from './scannedFile';

const notWorkedOut = /could not be worked out/;

/** The page's worker of that name, once it runs. */
async function running(page: Page, name: string): Promise<Worker> {
  const find = () => page.workers().find((each) => each.url().includes(`${name}.worker`));
  await expect.poll(() => find() !== undefined).toBe(true);
  return find()!;
}

/** Workers of that name start with a script that throws, or with an empty one that answers nothing. */
const broken = (page: Page, name: string, body = 'throw new Error("broken")') =>
  page.route(`**/${name}.worker*`, (route) => route.fulfill({ contentType: 'text/javascript', body }));
const mended = (page: Page, name: string) => page.unroute(`**/${name}.worker*`);

const template = (page: Page) => page.getByTestId('template').locator('text').allTextContents();

test('a solver that dies is started anew; where it dies twice that is told, and it is tried again when asked', async ({
  page,
}) => {
  await openApp(page);
  const field = valueField(page, 'corner-left-1');
  const first = await running(page, 'solver');
  const ended = first.waitForEvent('close');
  await first.evaluate(() => {
    self.addEventListener('message', () => {
      throw new Error('out of memory');
    });
  });
  await field.fill('28 1/2');
  await field.blur();
  await ended;
  await goTo(page, '#bench/back');
  await expect(page.getByTestId('template')).toBeVisible();
  await expect(page.getByText(notWorkedOut)).toHaveCount(0);
  const before = await template(page);

  await broken(page, 'solver');
  await (await running(page, 'solver')).evaluate(() => {
    setTimeout(() => {
      throw new Error('dies');
    });
  });
  await goTo(page, '#site');
  await field.fill('29 1/2');
  await field.blur();
  await expect(page.getByText(/could not be worked out \(the worker that does the sums stopped\)/)).toBeVisible();
  await kept(page);
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText(notWorkedOut)).toBeVisible();
  await mended(page, 'solver');
  await page.getByRole('button', { name: 'Work it out again' }).click();
  await expect(page.getByText(notWorkedOut)).toHaveCount(0);
  await goTo(page, '#bench/back');
  await expect.poll(() => template(page)).not.toEqual(before);
});

test('a solver that never answers is given up and told; the next reading works it out', async ({ page }) => {
  await page.clock.install();
  await openApp(page);
  await (await running(page, 'solver')).evaluate(() => self.close());
  const field = valueField(page, 'corner-left-1');
  await field.fill('29 1/2');
  await field.blur();
  await page.clock.fastForward(95_000);
  await expect(
    page.getByText(/could not be worked out \(the worker that does the sums does not answer\)/),
  ).toBeVisible();
  await field.fill('28 3/4');
  await field.blur();
  await expect(page.getByText(notWorkedOut)).toHaveCount(0);
});

test('workers that plan the survey or the stock, or read a scan, and stop: each is told, and works again', async ({
  page,
}) => {
  for (const name of ['survey', 'stock', 'scan']) await broken(page, name);
  await openApp(page);
  await jobMenu(page, 'New job');
  await expect(page.getByText(/The survey could not be planned/)).toBeVisible();
  await mended(page, 'survey');
  await page.getByRole('button', { name: 'Add a reading' }).click();
  await page.getByRole('menuitem', { name: /^Wall to wall/ }).click();
  for (const text of ['10', '12', '59 1/2']) {
    await page.keyboard.type(text);
    await page.keyboard.press('Enter');
  }
  await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();

  await goTo(page, '#van/pieces');
  await expect(page.getByText(/the worker that plans stock lengths stopped/)).toBeVisible();
  await mended(page, 'stock');
  await page.getByRole('button', { name: /again/i }).click();
  await expect(page.getByText(/stopped/)).toHaveCount(0);

  await goTo(page, '#site/scan');
  const scan = { name: 'bath.ply', mimeType: 'application/octet-stream', buffer: scannedPly(3000) };
  await page.getByTestId('scan-file').setInputFiles(scan);
  await expect(page.getByText(/The work on this scan stopped by itself/)).toBeVisible();
  await mended(page, 'scan');
  await page.getByTestId('scan-file').setInputFiles(scan);
  await expect(page.getByText('bath.ply, PLY')).toBeVisible();
});

test('a worker is started once, however often what asks it is opened', async ({ page }) => {
  await openApp(page);
  for (let visit = 0; visit < 3; visit++) {
    await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();
    await goTo(page, '#van/pieces');
    await expect(page.getByRole('tab', { name: 'Pieces and sheets' })).toBeVisible();
    await goTo(page, '#site/readings');
  }
  await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();
  const started = page.workers().map((each) => each.url());
  expect(started.some((url) => url.includes('survey.worker'))).toBe(true);
  expect(started.length).toBe(new Set(started).size);
});
