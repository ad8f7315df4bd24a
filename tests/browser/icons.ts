import { readFile, writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import { browserLaunch } from './browser';

/** Draws the PNG icons of src/public from icon.svg. A maskable one keeps the mark inside the circle that is never cut. */
const folder = fileURLToPath(new URL('../../src/public/', import.meta.url));
const svg = await readFile(`${folder}icon.svg`, 'utf8');
const icons = [
  { file: 'icon-192.png', side: 192, mark: 1 },
  { file: 'icon-512.png', side: 512, mark: 1 },
  { file: 'icon-maskable-512.png', side: 512, mark: 0.7 },
  { file: 'icon-apple-180.png', side: 180, mark: 0.84 },
];

const browser = await chromium.launch(browserLaunch());
const page = await browser.newPage();
for (const { file, side, mark } of icons) {
  await page.setViewportSize({ width: side, height: side });
  const ground = mark < 1 ? '#fffefb' : 'transparent';
  await page.setContent(
    `<style>body{margin:0;display:grid;place-items:center;height:100vh;background:${ground}}svg{width:${mark * 100}%}</style>${svg}`,
  );
  await writeFile(`${folder}${file}`, await page.screenshot({ omitBackground: true }));
}
await browser.close();
