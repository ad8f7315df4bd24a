import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { fullPlan, jobWith, noisy, plausibleAlcove } from '../simulate';
import { goTo, kept, openApp, valueField } from './app';
import { watch } from './watch';

const JOBS = 500;
const PHOTOS_EACH = 2;
const PHOTO_BYTES = 60_000;
/** Jobs of a file at the place of this one have a name of their own. */
const SOUGHT = 321;

const rows = (page: Page) => page.getByRole('list', { name: 'Jobs', exact: true }).getByRole('listitem');

/** Puts jobs with photos into the page's storage, as it keeps its own. */
const seed = ([count, photosEach, bytes, text]: [number, number, number, string]) =>
  new Promise<void>((done, failed) => {
    const opening = indexedDB.open('nookwright');
    opening.onerror = () => failed(opening.error);
    opening.onsuccess = () => {
      const both = opening.result.transaction(['jobs', 'photos'], 'readwrite');
      for (let i = 1; i <= count; i++) {
        const id = `seeded-${i}`;
        const job = { ...JSON.parse(text), name: `Load ${i}`, place: `Street ${i % 40}` };
        both.objectStore('jobs').put({ id, draft: { id, job, typed: {} }, changedAt: 1e12 + i, revision: 1 });
        for (let n = 0; n < photosEach; n++) {
          const picture = crypto.getRandomValues(new Uint8Array(bytes));
          picture.set([0xff, 0xd8, 0xff]);
          const about = { type: 'image/jpeg', width: 1600, height: 1200, takenAt: 1e12 };
          both.objectStore('photos').put({ job: id, id: `p${n}`, bytes: picture, ...about });
        }
      }
      both.oncomplete = () => {
        opening.result.close();
        done();
      };
      both.onabort = () => failed(both.error);
    };
  });

test(`${JOBS} jobs with ${PHOTOS_EACH} photos each are listed, found, opened, saved in one file and brought back`, async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await page.goto('./#jobs');
  await expect(page.getByRole('heading', { name: 'All jobs' })).toBeVisible();
  const scene = readFileSync(new URL('../../scenes/nearly-true.json', import.meta.url), 'utf8');
  await page.evaluate(seed, [JOBS, PHOTOS_EACH, PHOTO_BYTES, scene] as [number, number, number, string]);
  await page.reload();
  await expect(page.getByRole('heading', { name: `Load ${JOBS}`, exact: true })).toBeVisible();
  expect(await rows(page).count()).toBeGreaterThanOrEqual(JOBS);
  await page.getByRole('searchbox').fill(`load ${SOUGHT}`);
  await expect(rows(page)).toHaveCount(1);
  await page.getByRole('searchbox').fill('');

  const saving = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save all jobs in one file' }).click();
  const file = await (await saving).path();
  await page.getByTestId('jobs-file').setInputFiles(file);
  await page.getByRole('button', { name: `Bring in ${JOBS} jobs` }).click();
  await expect(page.getByText(`${JOBS} jobs brought in`)).toBeVisible();
  await page.getByRole('searchbox').fill(`load ${SOUGHT}`);
  await expect(rows(page)).toHaveCount(2);
  await rows(page).first().getByRole('button', { name: /^Open/ }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue(`Load ${SOUGHT}`);
  const stored = await page.evaluate(
    () =>
      new Promise<number>((done) => {
        const opening = indexedDB.open('nookwright');
        opening.onsuccess = () => {
          const counting = opening.result.transaction('photos').objectStore('photos').count();
          counting.onsuccess = () => done(counting.result);
        };
      }),
  );
  expect(stored).toBe(2 * JOBS * PHOTOS_EACH);
  expect(watched).toEqual({ errors: [], strangers: [] });
});

test('a job of 400 readings opens, is worked out, and takes what is typed letter by letter', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  const alcove = plausibleAlcove(7);
  const readings = Array.from({ length: 8 }, (_, i) =>
    fullPlan(alcove, { top: 980 - 30 * i, seed: i + 1, grid: 1 }).map((reading) => ({
      ...reading,
      id: `${reading.id}-${i}`,
    })),
  ).flat();
  const job = { ...jobWith(noisy(readings.slice(0, 400), 5)), name: 'Many readings' };
  await openApp(page);
  await page
    .getByTestId('job-file')
    .setInputFiles({ name: 'many.json', mimeType: 'application/json', buffer: Buffer.from(JSON.stringify(job)) });
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue('Many readings');
  const folded = page.getByRole('region').getByRole('button', { expanded: false }).and(page.locator('h3 button'));
  while ((await folded.count()) > 0) await folded.first().click();
  await expect(page.locator('[data-reading]')).toHaveCount(400);
  await expect(page.getByText(/The sheets cover the alcove|before anything is cut/)).toBeVisible();
  const field = valueField(page, 'corner-left-1-3');
  await field.focus();
  await page.keyboard.type('28 13/16');
  await expect(field).toHaveValue('28 13/16');
  await page.keyboard.press('Tab');
  await kept(page);
  await goTo(page, '#bench/back');
  await expect(page.getByTestId('template')).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(0);
  expect(watched).toEqual({ errors: [], strangers: [] });
});
