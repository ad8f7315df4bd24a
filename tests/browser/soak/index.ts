// A long soak: `npm run soak -- [EDITS]`, after a build. Prints what the page holds on to as edits go by.
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { browserLaunch } from '../browser';
import { freePort } from '../freePort';
import { growth, type Sample, soak } from './soak';

const edits = Number(process.argv[2] ?? 6000);
if (!Number.isInteger(edits) || edits < 100) {
  console.error('How many edits? A whole number from 100 up.');
  process.exit(2);
}
const MB = 1024 * 1024;
const port = await freePort();
const server = await preview({ preview: { host: '127.0.0.1', port, strictPort: true } });
const browser = await chromium.launch(browserLaunch());
try {
  const page = await browser.newPage({ baseURL: `http://127.0.0.1:${port}/`, serviceWorkers: 'block' });
  const began = performance.now();
  const told = ({ edits: at, heap, nodes, listeners, gpu, blobs }: Sample) =>
    console.log(
      `${String(at).padStart(7)} edits ${((performance.now() - began) / 1000).toFixed(0).padStart(5)} s: heap ${(heap / MB).toFixed(2)} MB, ` +
        `${nodes} nodes, ${listeners} listeners, ${gpu} parts of drawings, ${blobs} blobs`,
    );
  const samples = await soak(page, { warmUp: 520, edits, samples: 10, told });
  const { heap, nodes } = growth(samples);
  console.log(
    `\nGrowth per 1000 edits: ${((1000 * heap) / MB).toFixed(3)} MB of heap, ${(1000 * nodes).toFixed(1)} nodes.`,
  );
} finally {
  await browser.close();
  await server.close();
}
