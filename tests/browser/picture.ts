// Takes the picture of README.md from the built app: npm run picture
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium, type Page } from '@playwright/test';
import { preview } from 'vite';
import { browserLaunch } from './browser';
import { freePort } from './freePort';

const root = fileURLToPath(new URL('../..', import.meta.url));
const target = fileURLToPath(new URL('../../scenes/pictures/alcove.png', import.meta.url));

mkdirSync(new URL('.', pathToFileURL(target)), { recursive: true });
const server = await preview({ root, preview: { host: '127.0.0.1', port: await freePort(), strictPort: true } });
const browser = await chromium.launch(browserLaunch());
try {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 }, reducedMotion: 'reduce' });
  await page.goto(`${server.resolvedUrls?.local[0] ?? ''}#site/truth`);
  await page.mouse.move(3, 3);
  await page.mouse.move(700, 890);
  await page.locator('canvas').first().waitFor();
  await page.waitForLoadState('networkidle');
  writeFileSync(target, await stillScreenshot(page));
  console.log(`Wrote ${target}`);
} finally {
  await browser.close();
  await server.close();
}

/** The page once it looks the same twice in a row. */
async function stillScreenshot(page: Page): Promise<Buffer> {
  let last = await page.screenshot();
  for (let look = 0; look < 20; look++) {
    await page.waitForTimeout(1000);
    const now = await page.screenshot();
    if (now.equals(last)) return now;
    last = now;
  }
  throw new Error('the page does not come to rest');
}
