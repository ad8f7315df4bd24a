// Takes the picture of README.md from the built app: npm run picture
import { mkdirSync, writeFileSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { atRest } from './atRest';
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
  writeFileSync(target, await atRest(() => page.screenshot()));
  console.log(`Wrote ${target}`);
} finally {
  await browser.close();
  await server.close();
}
