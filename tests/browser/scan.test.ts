import { expect, test } from '@playwright/test';
import { openApp } from './app';
import { scannedPly } from './scannedFile';

const ply = { name: 'bath.ply', mimeType: 'application/octet-stream', buffer: scannedPly() };

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
