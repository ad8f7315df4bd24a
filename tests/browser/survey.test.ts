import { spawnSync } from 'node:child_process';
import { mkdtemp, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { editableLength, type Result } from '../../src/core';
import { resultJson } from '../../src/output';
import { plausibleAlcove } from '../simulate';
import { atHand, goTo, jobMenu, kept, openApp } from './app';
import { entryOf, inHand, inSixteenths, openEntries, savedJob, shownAt } from './entered';
import { farApart } from './farApart';
import { watch } from './watch';

const phone = { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true };
const alcove = plausibleAlcove(7);
/** Nobody plans more. */
const MOST = 140;

/** The keys, as their names, for a length in sixteenths. */
function keysFor(mm: number): { digits: string[]; fraction: string | null } {
  const text = inSixteenths(Math.abs(mm));
  const [whole = '', fraction = null] = text.includes('/')
    ? text.includes(' ')
      ? text.split(' ')
      : ['', text]
    : [text];
  return { digits: [...whole], fraction };
}

/** Enters the number in hand with taps on keys; how many taps it took beside the digits. */
async function tapIn(page: Page): Promise<number> {
  const number = await inHand(page);
  const value = shownAt(alcove, number);
  const entry = entryOf(page);
  let taps = 0;
  const tap = async (name: string) => {
    await entry.getByRole('button', { name, exact: true }).tap();
    taps++;
  };
  const { digits, fraction } = keysFor(value);
  for (const digit of digits) await entry.getByRole('button', { name: digit, exact: true }).tap();
  if (fraction) await tap(fraction);
  if (number.where.kind === 'straightedge' && value < 0) {
    await entry.getByRole('radio', { name: 'hump' }).tap();
    taps++;
  }
  await tap('Next');
  return taps;
}

/** Keeps what the worker that solves has answered last, as the page got it. */
async function listenToSolver(page: Page): Promise<() => Promise<Result>> {
  await page.addInitScript(() => {
    const Plain = window.Worker;
    window.Worker = class extends Plain {
      constructor(address: string | URL, options?: WorkerOptions) {
        super(address, options);
        if (options?.name !== 'solver') return;
        this.addEventListener('message', ({ data }) => {
          if (data?.value?.format === 'nookwright-result') Object.assign(window, { lastResult: data.value });
        });
      }
    };
  });
  return () => page.evaluate(() => (window as unknown as { lastResult: Result }).lastResult);
}

/** A result without what the plan of stock lengths counts. */
const withoutTrim = (result: Result): Result => ({
  ...result,
  materials: { ...result.materials, lines: result.materials.lines.filter(({ id }) => !/^trim(\.|$)/.test(id)) },
});

/** The result.json that the headless run makes of a job file. */
async function headless(text: string): Promise<string> {
  const place = await mkdtemp(join(tmpdir(), 'survey-'));
  try {
    await writeFile(join(place, 'job.json'), text);
    const run = spawnSync(
      process.execPath,
      ['--import', 'tsx', 'src/cli/job.ts', join(place, 'job.json'), '--out', join(place, 'out')],
      { cwd: resolve(import.meta.dirname, '../..'), encoding: 'utf8' },
    );
    expect(run.stderr).toBe('');
    return await readFile(join(place, 'out/result.json'), 'utf8');
  } finally {
    await rm(place, { recursive: true, force: true });
  }
}

test.describe('on a phone', () => {
  test.use({ ...phone, serviceWorkers: 'allow' });

  test('a whole survey by touch with the network off, over a reload half-way, ends in the result of the headless run', async ({
    page,
    context,
    baseURL,
  }) => {
    test.setTimeout(480_000);
    const watched = watch(page, baseURL ?? '');
    const lastResult = await listenToSolver(page);
    await openApp(page);
    await jobMenu(page, 'New job');
    await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();
    await atHand(page);
    await context.setOffline(true);

    await page.getByRole('button', { name: 'Enter it' }).tap();
    let taps = 1;
    const classics: number[] = [];
    for (let i = 0; i < 9; i++) {
      const { where } = await inHand(page);
      expect(['tape-to-corner', 'tape-to-rim']).toContain(where.kind);
      taps += await tapIn(page);
      classics.push(taps);
      taps = 0;
    }
    expect(Math.max(...classics)).toBeLessThanOrEqual(4);

    for (let i = 0; i < 20; i++) await tapIn(page);
    const before = await page.getByRole('toolbar').getByRole('button', { name: /: \d/ }).count();
    await entryOf(page).getByRole('button', { name: 'Close the entry' }).tap();
    await kept(page);
    await page.reload();
    await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();
    expect(await page.getByRole('toolbar').getByRole('button', { name: /: \d/ }).count()).toBe(before);

    await page.getByRole('button', { name: 'Enter it' }).tap();
    for (let i = 0; i < MOST && (await entryOf(page).count()) > 0; i++) await tapIn(page);
    await expect(entryOf(page)).toHaveCount(0);
    expect(await openEntries(page)).toBe('All of the plan is read');

    const text = await savedJob(page);
    const { readings } = JSON.parse(text) as { readings: unknown[] };
    expect(readings.length).toBeGreaterThan(25);
    // The app plans stock lengths and tries the templates on only when it is asked to.
    const { stock: _, dryFit: __, ...expected } = withoutTrim(JSON.parse(await headless(text)));
    await expect
      .poll(async () => farApart(withoutTrim(JSON.parse(resultJson(await lastResult()))), expected))
      .toEqual([]);
    expect(expected.adjustment.suspects).toEqual([]);
    expect(watched.errors.filter((error) => !/ERR_INTERNET_DISCONNECTED/.test(error))).toEqual([]);
    expect(watched.strangers).toEqual([]);
  });

  test('the entry is accessible and all of it can be touched', async ({ page }) => {
    await openApp(page);
    await page.getByRole('button', { name: 'Enter it' }).tap();
    await expect(entryOf(page)).toBeVisible();
    const { violations } = await new AxeBuilder({ page })
      .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
      .analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
    const keys = await entryOf(page)
      .getByRole('button')
      .evaluateAll((all) =>
        all.map((key) => key.getBoundingClientRect()).map(({ width, height }) => Math.min(width, height)),
      );
    expect(keys.length).toBeGreaterThan(30);
    expect(Math.min(...keys)).toBeGreaterThanOrEqual(44);
    expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  });
});

const length = (mm: number) => expect.closeTo(mm, 6);

async function newSurvey(page: Page): Promise<void> {
  await openApp(page);
  await jobMenu(page, 'New job');
  await expect(page.getByText(/\d+ of \d+ to go$/)).toBeVisible();
}

async function readingsOf(page: Page): Promise<{ id: string; value: number; repeats?: number[] }[]> {
  return JSON.parse(await savedJob(page)).readings;
}

test('figures that arrive without a tap are entered along the plan, as a laser measure types them', async ({
  page,
}) => {
  await newSurvey(page);
  for (const line of ['0.731 m', '732 mm', '28 13/16"', '28.75']) {
    await page.keyboard.type(line);
    await page.keyboard.press('Enter');
  }
  await page.keyboard.press('Escape');
  expect((await readingsOf(page)).map(({ value }) => value)).toEqual([
    length(731),
    length(732),
    length(28.8125 * 25.4),
    length(28.75 * 25.4),
  ]);
});

test('a pasted list fills the plan in order; dictated words are understood; what is not a number stays', async ({
  page,
}) => {
  await newSurvey(page);
  await page.getByRole('button', { name: 'Enter it' }).click();
  const field = entryOf(page).getByRole('textbox').first();
  await field.evaluate((input, text) => {
    const clipboardData = new DataTransfer();
    clipboardData.setData('text', text);
    input.dispatchEvent(new ClipboardEvent('paste', { clipboardData, bubbles: true, cancelable: true }));
  }, '28 1/2\n29 1/4\n');
  await field.fill('twenty nine and thirteen sixteenths');
  await field.press('Enter');
  await field.fill('28 13/');
  await field.press('Enter');
  await expect(entryOf(page).getByRole('alert')).toBeVisible();
  await expect(field).toHaveValue('28 13/');
  await field.fill('28 13/16');
  await field.press('Enter');
  await page.keyboard.press('Escape');
  expect((await readingsOf(page)).map(({ value }) => value / 25.4)).toEqual(
    [28.5, 29.25, 29.8125, 28.8125].map((inches) => expect.closeTo(inches, 9)),
  );
});

test('the drawing is walked by arrow keys in the order of the plan, and shows what is entered', async ({ page }) => {
  await newSurvey(page);
  const places = page.getByRole('toolbar').getByRole('button');
  await places.first().focus();
  await expect(places.first()).toHaveAccessibleName(
    /^Level line to rim, back wall, at the plumb line: empty, best to read next$/,
  );
  await page.keyboard.press('ArrowRight');
  await expect(places.nth(1)).toBeFocused();
  await page.keyboard.press('Home');
  await page.keyboard.type('28 13/16');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Escape');
  await expect(places.first()).toHaveAccessibleName(/: 28 13\/16"/);
  await page.keyboard.press('End');
  await expect(places.last()).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(entryOf(page)).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(places.last()).toBeFocused();
});

test('a reading is taken again and its mean used; an earlier value is brought back, also after a reload', async ({
  page,
}) => {
  await openApp(page);
  const tag = page.getByRole('toolbar').getByRole('button', { name: /^Plumb line to corner, left corner, 26" below/ });
  const field = entryOf(page).getByRole('textbox').first();
  await tag.click();
  await field.fill('28 3/4');
  await field.press('Escape');
  await tag.click();
  await entryOf(page).getByText('More about this reading').click();
  await entryOf(page).getByRole('button', { name: 'Take it again' }).click();
  await field.fill('28 7/8');
  await field.press('Escape');
  await expect(tag).toHaveAccessibleName(/28 13\/16", mean of 2/);
  await kept(page);
  await page.reload();
  await tag.click();
  await entryOf(page).getByText('More about this reading').click();
  await expect(entryOf(page).getByText(/Taken 2 times, 1\/8" apart/)).toBeVisible();
  await entryOf(page)
    .getByRole('list', { name: 'Numbers of this place' })
    .getByRole('button', { name: /^value/ })
    .click();
  await entryOf(page).getByRole('button', { name: 'Bring back' }).click();
  await expect(field).toHaveValue(editableLength(28.8125 * 25.4, 'in'));
});

test('a straightedge says hollow or hump in words; a hung line is read gap by gap', async ({ page }) => {
  await openApp(page);
  const edge = page
    .getByRole('toolbar')
    .getByRole('button', { name: /^Straightedge, back wall.*: hollow/ })
    .first();
  await edge.click();
  await entryOf(page).getByRole('radio', { name: 'hump' }).click();
  await page.keyboard.press('Escape');
  await expect(
    page.getByRole('toolbar').getByRole('button', { name: /^Straightedge, back wall.*: hump/ }),
  ).not.toHaveCount(0);
  await page
    .getByRole('toolbar')
    .getByRole('button', { name: /^Gaps to a hung line, back wall.*: 4 gaps/ })
    .first()
    .click();
  const gaps = entryOf(page).getByRole('list', { name: 'Numbers of this place' }).getByRole('button');
  await expect(gaps).toHaveCount(4);
});

/** One white pixel. */
const PIXEL = 'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAQAAAC1HAwCAAAAC0lEQVR42mP8/x8AAwMCAO+ip1sAAAAASUVORK5CYII=';

test('a photo stays with its reading over a reload, and can be taken off', async ({ page }) => {
  await openApp(page);
  const tag = page.getByRole('toolbar').getByRole('button', { name: /^Plumb line to corner, left corner, 26" below/ });
  const more = async () => {
    await tag.click();
    await entryOf(page).getByText('More about this reading').click();
  };
  await more();
  await entryOf(page)
    .getByLabel('Add a photo')
    .setInputFiles({ name: 'corner.png', mimeType: 'image/png', buffer: Buffer.from(PIXEL, 'base64') });
  const photo = entryOf(page).getByRole('img', { name: 'Photo 1 of corner-left-1' });
  await expect(photo).toBeVisible();
  await entryOf(page).getByRole('button', { name: 'Close the entry' }).click();
  await kept(page);
  await page.reload();
  await more();
  await expect(photo).toBeVisible();
  await entryOf(page).getByRole('button', { name: 'Take photo 1 off' }).press('Enter');
  await expect(photo).toHaveCount(0);
  await expect(entryOf(page).getByLabel('Add a photo')).toBeFocused();
});

test('drawing and 3D show each other what is picked', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await openApp(page);
  await page.getByRole('radio', { name: 'Right' }).first().click();
  await expect(page.locator('[data-wall="right"]')).toHaveAttribute('data-picked', 'true');
  await expect(page.getByRole('status').filter({ hasText: 'Right side panel' })).toBeVisible();
  await goTo(page, '#site/truth');
  await expect(page.locator('[data-wall]')).toHaveCount(0);
});
