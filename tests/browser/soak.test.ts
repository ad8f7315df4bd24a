import { expect, test } from '@playwright/test';
import { growth, soak } from './soak/soak';

test('edits on and on leave nothing behind: no heap, nodes, listeners or parts of drawings in proportion to them', async ({
  page,
}, about) => {
  test.setTimeout(420_000);
  const samples = await soak(page, { warmUp: 520, edits: 480, samples: 4 });
  about.annotations.push({ type: 'soak', description: JSON.stringify(samples) });
  const { heap, nodes, listeners, gpu } = growth(samples);
  // A draft that stays takes some 10 kB, a result some 300 kB.
  expect(heap).toBeLessThan(3000);
  expect(nodes).toBeLessThan(1);
  expect(listeners).toBeLessThan(0.5);
  expect(gpu).toBeLessThan(0.1);
  expect(samples.at(-1)?.blobs).toBe(0);
});
