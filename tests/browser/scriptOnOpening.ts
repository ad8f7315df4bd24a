import { gzipSync } from 'node:zlib';
import { expect, type Page } from '@playwright/test';

/** The most compressed script that may be fetched before anybody touches the page, bytes. */
export const MOST_SCRIPT = 350_000;

/** Bytes of script, gzipped, that opening an address fetches until nothing more comes, while nobody touches the page. */
export async function scriptOnOpening(page: Page, address: string): Promise<{ bytes: number; files: string[] }> {
  const sizes: Promise<[string, number]>[] = [];
  page.on('response', (response) => {
    const name = new URL(response.url()).pathname;
    if (name.endsWith('.js')) sizes.push(response.body().then((body) => [name, gzipSync(body, { level: 9 }).length]));
  });
  await page.goto(address);
  await expect(page.getByRole('img', { name: 'The finished alcove, a plain picture' })).toBeVisible();
  await page.waitForLoadState('networkidle');
  const fetched = await Promise.all(sizes);
  return { bytes: fetched.reduce((sum, [, size]) => sum + size, 0), files: fetched.map(([name]) => name) };
}
