// Takes the pictures of the guide from the built app: npm run guide [-- NAME…]
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { type Browser, chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { atRest } from '../atRest';
import { browserLaunch } from '../browser';
import { freePort } from '../freePort';
import { prepare, type Shot, shots } from './shots';

const root = fileURLToPath(new URL('../../..', import.meta.url));
const folder = fileURLToPath(new URL('../../../src/guide/pictures', import.meta.url));
/** Device pixels to a CSS pixel: enough to be read on paper. */
const SCALE = 1.4;
const QUALITY = 0.6;

mkdirSync(folder, { recursive: true });
const names = process.argv.slice(2);
const wanted = names.length > 0 ? shots.filter(({ name }) => names.includes(name)) : shots;
const server = await preview({ root, preview: { host: '127.0.0.1', port: await freePort(), strictPort: true } });
const browser = await chromium.launch(browserLaunch());
let failed = 0;
try {
  for (const shot of wanted) {
    try {
      const bytes = await taken(browser, server.resolvedUrls?.local[0] ?? '', shot);
      writeFileSync(`${folder}/${shot.name}.webp`, bytes);
      console.log(`${shot.name}.webp  ${Math.round(bytes.length / 1000)} kB`);
    } catch (error) {
      failed++;
      console.error(`${shot.name}: ${(error as Error).message}`);
    }
  }
} finally {
  await browser.close();
  await server.close();
}
process.exitCode = failed > 0 ? 1 : 0;

async function taken(from: Browser, baseURL: string, shot: Shot): Promise<Buffer> {
  const [width, height] = shot.size;
  const page = await from.newPage({
    baseURL,
    viewport: { width, height },
    deviceScaleFactor: SCALE,
    reducedMotion: 'reduce',
    serviceWorkers: 'block',
    hasTouch: width < 700,
  });
  try {
    page.setDefaultTimeout(60_000);
    await prepare(page, shot);
    await page.waitForLoadState('networkidle');
    return await asWebp(page, await atRest(() => shoot(page, shot)));
  } finally {
    await page.close();
  }
}

async function shoot(page: Page, { of, atMost = Number.POSITIVE_INFINITY }: Shot): Promise<Buffer> {
  if (!of) return page.screenshot();
  // What stays at the top while the page scrolls would lie over what is shown.
  await page.addStyleTag({ content: 'header { position: static !important }' });
  const box = await of(page).first().boundingBox();
  if (!box) throw new Error('what is to be shown is not there');
  const top = box.y + (await page.evaluate(() => window.scrollY));
  const clip = { x: box.x, y: top, width: box.width, height: Math.min(box.height, atMost) };
  return page.screenshot({ fullPage: true, clip });
}

/** The browser's own encoder. */
async function asWebp(page: Page, png: Buffer): Promise<Buffer> {
  const base64 = await page.evaluate(
    async ([data, quality]) => {
      const bytes = Uint8Array.from(atob(data), (letter) => letter.charCodeAt(0));
      const picture = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      canvas.getContext('2d')?.drawImage(picture, 0, 0);
      const blob = await canvas.convertToBlob({ type: 'image/webp', quality });
      return btoa(Array.from(new Uint8Array(await blob.arrayBuffer()), (byte) => String.fromCharCode(byte)).join(''));
    },
    [png.toString('base64'), QUALITY] as const,
  );
  return Buffer.from(base64, 'base64');
}
