import { readFileSync } from 'node:fs';
import { expect, test } from '@playwright/test';
import { atHand, openApp } from './app';
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
  await expect(page.getByText(/bath\.ply ends too early: it announces 60,000 points/)).toBeVisible();
  await page.getByTestId('scan-file').setInputFiles({ ...ply, name: 'bath.las', buffer: Buffer.from('LASF') });
  await expect(
    page.getByText('LAS files are not read here. Save the scan as PLY, XYZ, CSV, OBJ or GLB.'),
  ).toBeVisible();
  await expect(page.getByText('Scans in this job')).toHaveCount(0);
});
