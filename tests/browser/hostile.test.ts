import { readFileSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { expect, type Page, test } from '@playwright/test';
import { goTo, openApp } from './app';
import { watch } from './watch';

/** Markup that would run in a page, short enough for an id. */
const MARKUP = `"><img src=x onerror=window.entered=1><script>`;
const FORMULA = '=HYPERLINK("https://example.invalid/","x")';

/** A job with markup and formulas wherever a person writes words. */
function hostileJob() {
  const job = JSON.parse(
    readFileSync(new URL('../../scenes/skewed-bowed-wet-wall.json', import.meta.url), 'utf8'),
  ) as Record<string, unknown> & { readings: { id: string; note?: string }[]; choices: { id: string }[] };
  return {
    ...job,
    name: `${MARKUP}${FORMULA}`,
    place: MARKUP,
    readings: job.readings.map((reading, i) => ({ ...reading, id: `${MARKUP}${i}`, note: `${MARKUP}\n${FORMULA}` })),
    choices: job.choices.map((choice, i) => ({ ...choice, id: `${MARKUP}${i}` })),
    quote: { client: MARKUP, from: `${FORMULA}\n${MARKUP}`, number: FORMULA, exclusions: [MARKUP, FORMULA] },
  };
}

const places = [
  '#site/readings',
  '#site/truth',
  '#site/holes',
  '#site/basics',
  '#bench/back',
  '#bench/sheets',
  '#bench/ways.back',
  '#van/materials',
  '#van/work',
  '#van/pieces',
  '#client/look',
  '#client/choices',
  '#client/price',
  '#jobs',
];

/** Elements that words must not turn into. */
const intruders = (page: Page) => page.locator('img[src="x"], body script:not([type=module]), [onerror]');

async function saved(page: Page, button: RegExp): Promise<Buffer> {
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: button }).first().click();
  return readFile(await (await downloading).path());
}

test('words that look like markup or a formula stay words: on every screen, in SVG, PDF, CSV and in a link', async ({
  page,
  context,
  baseURL,
}) => {
  test.setTimeout(400_000);
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  await page.getByTestId('job-file').setInputFiles({
    name: `${MARKUP}.json`,
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify(hostileJob())),
  });
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue(`${MARKUP}${FORMULA}`);
  for (const place of places) {
    await goTo(page, place);
    await expect(page.getByRole('main').getByRole('heading').first()).toBeVisible();
    await expect(intruders(page)).toHaveCount(0);
  }

  await goTo(page, '#bench/back');
  const svg = (await saved(page, /SVG$/)).toString('utf8');
  const inside = await page.evaluate((text) => {
    const drawing = new DOMParser().parseFromString(text, 'image/svg+xml');
    const all = [...drawing.querySelectorAll('*')];
    return {
      broken: drawing.querySelector('parsererror') !== null,
      names: [...new Set(all.map(({ localName }) => localName))],
      handlers: all
        .flatMap(({ attributes }) => [...attributes].map(({ name }) => name))
        .filter((name) => /^on/i.test(name)),
    };
  }, svg);
  expect(inside).toMatchObject({ broken: false, handlers: [] });
  expect(inside.names.filter((name) => ['script', 'img', 'image', 'foreignObject', 'a'].includes(name))).toEqual([]);

  const pdf = (await saved(page, /^Whole job: PDF/)).toString('latin1');
  expect(pdf.slice(0, 5)).toBe('%PDF-');
  expect(pdf).not.toMatch(/\/JavaScript|\/JS\b|\/URI\b|\/Launch|\/OpenAction/);

  await goTo(page, '#van/materials');
  const csv = (await saved(page, /^Shopping list/)).toString('utf8');
  expect(
    csv
      .split(/\r?\n/)
      .flatMap((line) => line.split(','))
      .filter((cell) => /^"?[=+@\t-]\D/.test(cell)),
  ).toEqual([]);

  await goTo(page, '#client/send');
  for (const what of [/prices/, /names on the quote/, /notes/]) await page.getByLabel(what).check();
  const link = page.getByLabel('The link');
  await expect(link).toHaveValue(/#/);
  const other = await context.newPage();
  const watchedThere = watch(other, baseURL ?? '');
  await other.goto(await link.inputValue());
  await expect(other.getByText(MARKUP).first()).toBeVisible();
  await expect(intruders(other)).toHaveCount(0);

  for (const each of [page, other]) expect(await each.evaluate(() => 'entered' in window)).toBe(false);
  for (const each of [watched, watchedThere]) expect(each).toEqual({ errors: [], strangers: [] });
});
