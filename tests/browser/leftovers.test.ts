import { expect, type Page, test } from '@playwright/test';
import { goTo, openApp } from './app';
import { watchDrawings } from './soak/drawings';
import { atEase, walk } from './soak/edits';
import { gaugesOf } from './soak/gauges';

/** What has to be as it was, once all parts of the app were seen. */
const AS_BEFORE = ['documents', 'listeners', 'drawings in 3D', 'geometries', 'textures', 'programs'];

async function thereAndBack(page: Page): Promise<void> {
  await walk(page);
  await goTo(page, '#site/readings');
  await atEase(page);
}

test('going through all parts of the app and back leaves nothing behind', async ({ page }) => {
  await watchDrawings(page);
  await openApp(page);
  const measure = await gaugesOf(page);
  const left = async () => {
    const sample = await measure();
    return Object.fromEntries(AS_BEFORE.map((what) => [what, sample[what]]));
  };
  await thereAndBack(page);
  await thereAndBack(page);
  const before = await left();
  expect(before['drawings in 3D']).toBeGreaterThan(0);
  expect(before.geometries).toBeGreaterThan(0);
  await thereAndBack(page);
  await thereAndBack(page);
  expect(await left()).toEqual(before);
});
