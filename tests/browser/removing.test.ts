import { expect, type Locator, type Page, test } from '@playwright/test';
import scene from '../../scenes/nearly-true.json' with { type: 'json' };
import { plausibleAlcove } from '../simulate';
import { cellScan } from '../simulate/scanner';
import { goTo, jobMenu, openApp } from './app';

const { finish } = scene;

/** The demo with enough in every list that rows can be removed from its middle, its end, and until none is left. */
async function openFull(page: Page, hash: string): Promise<void> {
  const job = {
    ...scene,
    readings: scene.readings.map((reading) =>
      reading.id === 'corner-left-1' ? { ...reading, repeats: [reading.value, reading.value] } : reading,
    ),
    scans: ['first', 'second', 'third'].map((id) => ({
      ...cellScan(plausibleAlcove(3), { id, size: 200 }),
      off: true,
    })),
    studs: [200, 400, 600].map((at, i) => ({ id: `stud-${i + 1}`, wall: 'left', at, width: 38 })),
    choices: ['Ribbed', 'Marble'].map((id) => ({ id, finish, trim: {} })),
    quote: { exclusions: ['painting', 'disposal', 'plumbing'] },
    prices: {
      ...scene.prices,
      others: ['delivery', 'parking', 'stairs'].map((label) => ({ label, amount: 1000, taxedAs: 'none' })),
    },
    shelves: ['low', 'mid', 'high'].map((id, i) => ({
      id,
      corner: 'left',
      aboveRim: 300 + 300 * i,
      back: 200,
      side: 200,
    })),
    trim: { ...scene.trim, stock: [{ length: 2000 }, { length: 2440 }, { length: 3000 }] },
  };
  await openApp(page);
  await page.getByTestId('job-file').setInputFiles({
    name: 'full.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...job, name: 'Full of rows' })),
  });
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue('Full of rows');
  await goTo(page, hash);
}

async function press(button: Locator): Promise<void> {
  await button.focus();
  await button.press('Enter');
}

const button = (within: Page | Locator, name: string | RegExp) => within.getByRole('button', { name, exact: true });

/** Removes the second of three rows, then the last, then the only one left. */
async function removeAll(rows: () => Locator, add: Locator): Promise<void> {
  await expect(rows()).toHaveCount(3);
  await press(rows().nth(1));
  await expect(rows()).toHaveCount(2);
  await expect(rows().nth(1)).toBeFocused();
  await press(rows().nth(1));
  await expect(rows()).toHaveCount(1);
  await expect(rows().first()).toBeFocused();
  await press(rows().first());
  await expect(rows()).toHaveCount(0);
  await expect(add).toBeFocused();
}

test('who removes holes and studs by keyboard goes on to the next, the one before, and what adds', async ({ page }) => {
  await openFull(page, '#site/holes');
  const holes = page.getByRole('region', { name: 'Holes for fixtures' });
  await removeAll(() => button(holes, /^Remove /), button(holes, 'Add a fixture'));
  const studs = page.getByRole('region', { name: 'Studs and blocking' });
  await removeAll(() => button(studs, /^Remove /), button(studs, 'Add a stud'));
});

test('who removes readings, gaps and repeats by keyboard stays among them', async ({ page }) => {
  await openFull(page, '#site/readings');
  const record = page.getByRole('region', { name: 'Record' });
  const reading = (id: string) => record.locator(`[data-reading="${id}"]`);
  const fold = (name: RegExp) => button(record.getByRole('heading', { name }), name);

  const drop = () => button(reading('corner-left-1'), /drop it$/);
  await press(drop().first());
  await expect(drop()).toHaveCount(1);
  await expect(drop()).toBeFocused();
  await press(drop());
  await expect(drop()).toHaveCount(0);
  await expect(button(reading('corner-left-1'), 'More for corner-left-1')).toBeFocused();

  await press(fold(/^Gaps to a hung line/));
  const gap = () => button(reading('plumb-back-1'), /^Remove gap/);
  const gaps = await gap().count();
  await press(gap().nth(gaps - 1));
  await expect(gap()).toHaveCount(gaps - 1);
  await expect(gap().nth(gaps - 2)).toBeFocused();
  for (let left = gaps - 1; left > 2; left--) await press(gap().first());
  // No more can be removed: the rows that are left keep the focus.
  await expect(gap()).toHaveCount(2);
  await expect(gap().first()).toBeDisabled();
  expect(await reading('plumb-back-1').evaluate((row) => row.contains(document.activeElement))).toBe(true);

  const spans = record.getByRole('region', { name: /wall to wall/i });
  await press(button(spans, /wall to wall/i).first());
  const ids = await spans.locator('[data-reading]').evaluateAll((all) => all.map((each) => each.dataset.reading ?? ''));
  expect(ids.length).toBeGreaterThan(2);
  const remove = async (id: string) => {
    await press(button(reading(id), `More for ${id}`));
    await press(button(reading(id), 'Remove'));
    await expect(reading(id)).toHaveCount(0);
  };
  await remove(ids[1]!);
  await expect(button(reading(ids[2]!), `More for ${ids[2]}`)).toBeFocused();
  const order = await record.getByRole('heading', { level: 3 }).allTextContents();
  for (const id of ids.filter((_, i) => i !== 1).reverse()) await remove(id);
  // The whole kind is gone: the kind after it has the focus.
  await expect(spans).toHaveCount(0);
  const next = order[order.findIndex((words) => /wall to wall/i.test(words)) + 1]!;
  await expect(button(record.getByRole('heading', { level: 3 }).filter({ hasText: next }), /./)).toBeFocused();
});

test('who takes scans out by keyboard goes on to the next, the one before, and the choice of a file', async ({
  page,
}) => {
  await openFull(page, '#site/scan');
  const scans = page.getByRole('region', { name: 'Scans in this job' });
  await removeAll(() => button(scans, 'Take it out'), button(page, 'Choose a file'));
});

test('who leaves a doubted reading out by keyboard stays in the record', async ({ page }) => {
  await openFull(page, '#site/readings');
  const field = page.getByRole('textbox', { name: /^corner-left-2, .*: value$/ });
  await field.fill('40');
  await field.blur();
  const record = page.getByRole('region', { name: 'Record' });
  await expect(page.getByText(/Re-measure this one: corner-left-2/)).toBeVisible();
  await press(button(record, 'Leave it out').first());
  await expect(page.getByText(/Re-measure this one: corner-left-2/)).toHaveCount(0);
  await expect.poll(() => record.evaluate((card) => card.contains(document.activeElement))).toBe(true);
});

test('who removes shelves, lengths and points by keyboard goes on as well', async ({ page }) => {
  await openFull(page, '#bench/shelves');
  const shelves = page.getByRole('region', { name: 'Shelves', exact: true });
  await removeAll(() => button(shelves, /Remove shelf/), button(shelves, 'Add a shelf'));
  await goTo(page, '#bench/trim');
  const lengths = page.getByRole('region', { name: 'Lengths that the trim is sold in' });
  const length = () => button(lengths, /^Remove length/);
  await press(length().nth(2));
  await expect(length().nth(1)).toBeFocused();
  await press(length().nth(1));
  // The last length cannot go: the row's field is next best.
  await expect(length()).toBeDisabled();
  await expect(lengths.getByRole('textbox').first()).toBeFocused();
  await goTo(page, '#bench/legs');
  const rim = page.getByRole('region', { name: 'Rim, rolling over' });
  const point = () => button(rim, /remove point/);
  const points = await point().count();
  expect(points).toBeGreaterThan(2);
  for (let left = points; left > 0; left--) {
    await press(point().nth(left - 1));
    await expect(point()).toHaveCount(left - 1);
    await expect(left > 1 ? point().nth(left - 2) : button(rim, /^Add a point/)).toBeFocused();
  }
});

test('who takes prices and lines out by keyboard goes on as well', async ({ page }) => {
  await openFull(page, '#client/price');
  await removeAll(() => button(page, /^Take what else, row \d, out$/), button(page, 'Add something else'));
  await removeAll(() => button(page, /^Take row \d out$/), button(page, 'Add a width of trim'));
  const quote = page.getByRole('region', { name: 'On the quote' });
  await removeAll(() => button(quote, /^Take line \d out$/), button(quote, 'Add a line'));
});

test('who takes choices out by keyboard goes on as well', async ({ page }) => {
  await openFull(page, '#client/choices');
  const out = () => button(page, 'Take out');
  await expect(out()).toHaveCount(2, { timeout: 60_000 });
  await press(out().first());
  await expect(out()).toHaveCount(1, { timeout: 60_000 });
  await expect(out()).toBeFocused();
  await press(out());
  await expect(out()).toHaveCount(0, { timeout: 60_000 });
  await expect(button(page, 'Add a choice')).toBeFocused();
});

test('who deletes, brings back and removes jobs by keyboard stays in the list', async ({ page }) => {
  await openFull(page, '#site');
  await jobMenu(page, 'All jobs');
  const more = (name: string) => button(page, `More for ${name}`);
  const choose = async (name: string, item: string) => {
    await press(more(name).first());
    await page.getByRole('menuitem', { name: item }).press('Enter');
  };
  for (let copy = 0; copy < 3; copy++) {
    await choose('Full of rows', 'Copy');
    await expect(button(page, /^More for Full of rows \(/)).toHaveCount(copy + 1);
  }
  const deleted = page.getByRole('list', { name: 'Deleted jobs' });
  const back = () => button(page, 'Bring it back');
  for (let i = 1; i <= 3; i++) {
    await choose('Full of rows (copy)', 'Delete');
    await expect(deleted.getByRole('listitem')).toHaveCount(i);
    await expect(back()).toBeFocused();
  }
  // What is typed after that goes where it is typed.
  await page.getByRole('searchbox').fill('');
  await page.getByRole('searchbox').pressSequentially('full');
  await expect(page.getByRole('searchbox')).toHaveValue('full');
  await press(back());
  await expect(button(page, 'Open Full of rows (copy)')).toBeFocused();
  await choose('Full of rows (copy)', 'Delete');
  await expect(deleted.getByRole('listitem')).toHaveCount(3);

  const forGood = () => button(deleted, /^Remove for good/);
  const confirm = async () => {
    await expect(page.getByRole('alertdialog')).toBeVisible();
    await page.getByRole('alertdialog').getByRole('button', { name: 'Remove for good' }).press('Enter');
  };
  await press(forGood().nth(1));
  await confirm();
  await expect(forGood()).toHaveCount(2);
  await expect(forGood().nth(1)).toBeFocused();
  const each = () => button(deleted, /^Bring back/);
  await press(each().nth(1));
  await expect(each()).toHaveCount(1);
  await expect(each()).toBeFocused();
  await press(forGood().first());
  await confirm();
  await expect(deleted).toHaveCount(0);
  await expect(page.getByRole('heading', { name: 'All jobs' })).toBeFocused();
});
