import { readFileSync } from 'node:fs';
import AxeBuilder from '@axe-core/playwright';
import { expect, type Page, test } from '@playwright/test';
import { formatLength, parseJob, solve } from '../../src/core';
import { atHand, benchWords, goTo, jobMenu, kept, openApp, valueField } from './app';
import { scannedPly } from './scannedFile';

test.use({ serviceWorkers: 'allow' });

const ply = { name: 'bath.ply', mimeType: 'application/octet-stream', buffer: scannedPly() };
const sorted = { name: 'Parts of the scan' };

test('a scan, from its file to the job, with the network off and by the keyboard alone', async ({ page, context }) => {
  await openApp(page, '#site/scan');
  await atHand(page);
  await context.setOffline(true);
  await page.getByTestId('scan-file').setInputFiles(ply);
  await expect(page.getByText('bath.ply, PLY')).toBeVisible();
  await expect(page.getByLabel('Unit of the file (guessed)')).toHaveValue('m');
  await expect(page.getByLabel('Up in the file (guessed)')).toHaveValue('+z');
  await page.getByRole('button', { name: 'Find the walls' }).press('Enter');

  const parts = page.getByRole('list', sorted);
  await expect(parts).toBeVisible();
  const count = async (part: string) => {
    const text = await parts.getByRole('listitem').filter({ hasText: part }).textContent();
    return Number(/([\d,]+) points/.exec(text ?? '')?.[1]?.replaceAll(',', ''));
  };
  const [back, others] = [await count('back wall'), await count('other things')];
  expect(back).toBeGreaterThan(2000);
  await page.getByRole('button', { name: 'Pick: back wall' }).press('Enter');
  await page.getByRole('button', { name: 'Set', exact: true }).press('Enter');
  expect(await count('other things')).toBe(back + others);
  await page.getByRole('button', { name: 'Undo the last mend' }).press('Enter');
  expect(await count('back wall')).toBe(back);

  // What a pointer draws around is picked by numbers.
  await page.getByText('Pick by place').press('Enter');
  await page.getByRole('group', { name: 'Out from the back wall' }).getByLabel('to').pressSequentially('1');
  await page.getByRole('button', { name: 'Pick these' }).press('Enter');
  await expect(page.getByText(/^[\d,]+ points picked: by place\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Set', exact: true }).press('Enter');
  expect(await count('other things')).toBeGreaterThan(others + 0.9 * back);
  await page.getByRole('button', { name: 'Undo the last mend' }).press('Enter');
  expect(await count('back wall')).toBe(back);

  await page.getByRole('button', { name: 'Take it into the job' }).press('Enter');
  await expect(page.getByText('The scan is in the job. Its points are kept in this browser')).toBeVisible();
  await expect(page.getByText('Its points are kept in this browser.', { exact: false }).last()).toBeVisible();

  await page.getByRole('button', { name: 'Job', exact: true }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: 'Save as a job file' }).click();
  // Closing, the menu takes the focus back.
  await expect(page.getByRole('button', { name: 'Job', exact: true })).toBeFocused();
  await expect(page.getByText('could not be worked out')).toHaveCount(0);
  const { scans } = JSON.parse(readFileSync(await (await download).path(), 'utf8'));
  expect(scans).toHaveLength(1);
  expect(Object.keys(scans[0].surfaces).sort()).toEqual(['back', 'left', 'right', 'rim']);

  await page.getByRole('button', { name: 'Mend it' }).press('Enter');
  await expect(parts).toBeVisible();
  expect(await count('back wall')).toBe(back);
});

test('a file that is no scan leaves all as it is, and says what to do', async ({ page }) => {
  await openApp(page, '#site/scan');
  await page.getByTestId('scan-file').setInputFiles({ ...ply, buffer: ply.buffer.subarray(0, 200_000) });
  await expect(page.getByText(/bath\.ply ends too early, at byte 200,000: it announces 60,000 points/)).toBeVisible();
  await page.getByTestId('scan-file').setInputFiles({ ...ply, name: 'bath.las', buffer: Buffer.from('LASF') });
  await expect(
    page.getByText('LAS files are not read here. Save the scan as PLY, XYZ, CSV, OBJ or GLB.'),
  ).toBeVisible();
  await expect(page.getByText('Scans in this job')).toHaveCount(0);
});

const demoFile = new URL('../../scenes/scans/tub-alcove.ply', import.meta.url);
const parts = (page: Page) => page.getByRole('list', sorted);
const found = (page: Page) => page.getByRole('list', { name: 'What the scan shows' });
const countOf = async (page: Page, part: string): Promise<number> => {
  const text = await parts(page).getByRole('listitem').filter({ hasText: part }).textContent();
  return Number(/([\d,]+) points/.exec(text ?? '')?.[1]?.replaceAll(',', ''));
};
const savedJob = async (page: Page) => {
  const download = page.waitForEvent('download');
  await jobMenu(page, 'Save as a job file');
  const parsed = parseJob(JSON.parse(readFileSync(await (await download).path(), 'utf8')));
  if (!parsed.ok) throw new Error('the saved job does not parse');
  return parsed.job;
};

/** The demo's job, its scan put away, and the same file chosen, sorted. */
async function sortedDemo(page: Page): Promise<void> {
  await openApp(page, '#site/scan');
  await page.getByRole('button', { name: 'Try a demo scan' }).click();
  await expect(page.getByText('tub-alcove.ply, PLY')).toBeVisible();
  await page.getByRole('button', { name: 'Find the walls' }).click();
  await expect(parts(page)).toBeVisible();
}

test('a demo scan opens with a job of its own, changes its panels, stays, and readings by hand correct it', async ({
  page,
}) => {
  await openApp(page, '#site/scan');
  await page.getByRole('button', { name: 'Try a demo scan' }).click();
  await expect(page.getByRole('textbox', { name: 'Name of the job' })).toHaveValue(/^Larkmere Wynd 3/);
  await page.getByRole('button', { name: 'Put the scan away' }).click();
  const byHand = await benchWords(page, ['Right']);

  await goTo(page, '#site/scan');
  await page.getByTestId('scan-file').setInputFiles({
    name: 'bath.ply',
    mimeType: 'application/octet-stream',
    buffer: readFileSync(demoFile),
  });
  await page.getByRole('button', { name: 'Find the walls' }).click();
  const others = await countOf(page, 'other things').catch(() => 0);
  await page.getByText('Pick by place').click();
  const upper = page.getByRole('group', { name: 'Height above the level line' });
  await upper.getByLabel('from').fill('34');
  await page.getByRole('button', { name: 'Pick these' }).click();
  await page.getByRole('button', { name: 'Set', exact: true }).click();
  expect(await countOf(page, 'other things')).toBeGreaterThan(others);
  await page.getByRole('button', { name: 'Take it into the job' }).click();
  await expect(found(page).getByRole('heading', { name: 'Right wall', exact: true })).toBeVisible();
  await expect(found(page).getByRole('img', { name: /^Right wall: / })).toBeVisible();

  // Cut as the scan has it: what the saved job gives outside the browser stands in the table of marks.
  const job = await savedJob(page);
  const { marks } = solve(job).panels.right.edges.back!;
  await expect.poll(() => benchWords(page, ['Right'])).not.toEqual(byHand);
  const words = (await benchWords(page, ['Right'])).join(' ');
  expect(marks.length).toBeGreaterThan(2);
  const strips = marks.map(({ sliver }) => `cut off ${formatLength(sliver, { unit: 'in' })}`);
  expect(new Set(strips).size).toBeGreaterThan(1);
  for (const strip of strips) expect(words).toContain(strip);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: /: SVG$/ }).click();
  expect(readFileSync(await (await download).path(), 'utf8')).toMatch(/^<(\?xml|svg)/);

  await kept(page);
  const withScan = await benchWords(page, ['Right']);
  await page.reload();
  await expect.poll(() => benchWords(page, ['Right'])).toEqual(withScan);
  await goTo(page, '#site/scan');
  await expect(page.getByText('Its points are kept in this browser.')).toBeVisible();

  await goTo(page, '#site/readings');
  const field = valueField(page, 'right corner');
  await field.fill('31 1/8');
  await field.blur();
  await expect.poll(() => benchWords(page, ['Right'])).not.toEqual(withScan);
  await goTo(page, '#site/scan');
  const right = found(page)
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name: 'Right wall', exact: true }) });
  await expect(right).toContainText('right corner');
});

test('points are picked by a line drawn around them and set to another part', async ({ page }) => {
  await page.setViewportSize({ width: 1440, height: 900 });
  await sortedDemo(page);
  await page.getByLabel('Draw around points in the drawing').check();
  const sheet = page.getByTestId('lasso');
  await sheet.scrollIntoViewIfNeeded();
  const box = (await sheet.boundingBox())!;
  const at = (x: number, y: number) => [box.x + x * box.width, box.y + y * box.height] as const;
  await page.mouse.move(...at(0.4, 0.3));
  await page.mouse.down();
  for (const [x, y] of [
    [0.6, 0.3],
    [0.6, 0.5],
    [0.4, 0.5],
    [0.4, 0.31],
  ] as const)
    await page.mouse.move(...at(x, y), { steps: 6 });
  await page.mouse.up();
  const status = page.getByText(/^[\d,]+ points picked: drawn around\.$/);
  await expect(status).toBeVisible();
  const picked = Number((await status.textContent())!.split(' ')[0]!.replaceAll(',', ''));
  expect(picked).toBeGreaterThan(100);
  const [all, unsorted] = [await countOf(page, 'back wall'), await countOf(page, 'not sorted')];
  await page.getByRole('combobox', { name: 'They are' }).selectOption('unknown');
  await page.getByRole('button', { name: 'Set', exact: true }).click();
  expect(await countOf(page, 'back wall')).toBeLessThan(all);
  const moved = (await countOf(page, 'not sorted')) - unsorted;
  expect(moved).toBeGreaterThan(0);
  expect(moved).toBeLessThanOrEqual(picked);
  await page.getByRole('button', { name: 'Undo the last mend' }).click();
  expect(await countOf(page, 'back wall')).toBe(all);
});

for (const [width, height] of [
  [390, 844],
  [1440, 900],
] as const) {
  test(`each step of a scan is accessible at ${width} × ${height}, and fits`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const sound = async () => {
      const { violations } = await new AxeBuilder({ page })
        .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'])
        .analyze();
      expect(violations.map(({ id, nodes }) => [id, nodes.map(({ target }) => target)])).toEqual([]);
      expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBeLessThanOrEqual(
        0,
      );
    };
    await openApp(page, '#site/scan');
    await page.getByRole('button', { name: 'Try a demo scan' }).click();
    await expect(page.getByText('tub-alcove.ply, PLY')).toBeVisible();
    await sound();
    await page.getByRole('button', { name: 'Find the walls' }).click();
    await expect(parts(page)).toBeVisible();
    for (const more of ['Pick one of the things it is made of', 'Pick by place']) await page.getByText(more).click();
    await page.getByLabel('Draw around points in the drawing').check();
    await page.getByRole('button', { name: 'Pick: back wall' }).click();
    await sound();
    await page.getByRole('button', { name: 'Take it into the job' }).click();
    await expect(found(page)).toBeVisible();
    await sound();
  });
}
