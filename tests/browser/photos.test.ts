import { expect, type Page, test } from '@playwright/test';
import { kept, openApp } from './app';
import { watch } from './watch';

const entryOf = (page: Page) => page.getByTestId('entry');

async function addPhoto(page: Page, file: { name: string; mimeType: string; buffer: Buffer }) {
  await entryOf(page).getByLabel('Add a photo').setInputFiles(file);
}

/** A JPEG of 3000 × 2000, its left half red and its right half blue, which says of itself that its left edge is up. */
async function turnedJpeg(page: Page): Promise<Buffer> {
  const base64 = await page.evaluate(async () => {
    const canvas = new OffscreenCanvas(3000, 2000);
    const pen = canvas.getContext('2d')!;
    pen.fillStyle = '#d00';
    pen.fillRect(0, 0, 1500, 2000);
    pen.fillStyle = '#00d';
    pen.fillRect(1500, 0, 1500, 2000);
    const bytes = new Uint8Array(await (await canvas.convertToBlob({ type: 'image/jpeg' })).arrayBuffer());
    return btoa(Array.from(bytes, (byte) => String.fromCharCode(byte)).join(''));
  });
  const plain = Buffer.from(base64, 'base64');
  // Exif: one entry in the first directory, tag 0x0112 (orientation), a short, 6.
  const tiff = Buffer.from('4d4d002a00000008000101120003000000010006000000000000', 'hex');
  const body = Buffer.concat([Buffer.from('Exif\0\0', 'latin1'), tiff]);
  const head = Buffer.from([0xff, 0xe1, (body.length + 2) >> 8, (body.length + 2) & 255]);
  return Buffer.concat([plain.subarray(0, 2), head, body, plain.subarray(2)]);
}

test('a photo is kept upright and small; an SVG with a script, and what is no picture, are refused in words', async ({
  page,
  baseURL,
}) => {
  const watched = watch(page, baseURL ?? '');
  await openApp(page);
  await page
    .getByRole('toolbar')
    .getByRole('button', { name: /^Plumb line to corner, left corner, 26" below/ })
    .click();
  await entryOf(page).getByText('More about this reading').click();

  const script = '<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"><script>window.entered=1</script></svg>';
  for (const [name, mimeType, text] of [
    ['photo.svg', 'image/svg+xml', script],
    ['photo.jpg', 'image/jpeg', script],
    ['photo.jpg', 'image/jpeg', '<html><script>window.entered=1</script>'],
  ] as const) {
    await addPhoto(page, { name, mimeType, buffer: Buffer.from(text) });
    await expect(page.getByText(/This picture cannot be read here/)).toBeVisible();
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await expect(page.getByText(/This picture cannot be read here/)).toHaveCount(0);
  }

  await addPhoto(page, { name: 'corner.jpg', mimeType: 'image/jpeg', buffer: await turnedJpeg(page) });
  const photo = entryOf(page).getByRole('img', { name: 'Photo 1 of corner-left-1' });
  await expect(photo).toBeVisible();
  const look = () =>
    photo.evaluate(async (element: HTMLImageElement) => {
      await element.decode();
      const canvas = new OffscreenCanvas(element.naturalWidth, element.naturalHeight);
      const pen = canvas.getContext('2d')!;
      pen.drawImage(element, 0, 0);
      const at = (y: number) => [...pen.getImageData(element.naturalWidth / 2, y, 1, 1).data.slice(0, 3)];
      const blob = await (await fetch(element.src)).blob();
      return {
        size: [element.naturalWidth, element.naturalHeight],
        top: at(50),
        bottom: at(element.naturalHeight - 50),
        type: blob.type,
        metadata: (await blob.text()).includes('Exif'),
      };
    });
  const shown = await look();
  expect(shown.size).toEqual([1067, 1600]);
  expect(shown.top[0]).toBeGreaterThan(180);
  expect(shown.bottom[2]).toBeGreaterThan(180);
  expect(shown).toMatchObject({ type: 'image/jpeg', metadata: false });
  await kept(page);

  expect(await page.evaluate(() => 'entered' in window)).toBe(false);
  expect(watched).toEqual({ errors: [], strangers: [] });
});
