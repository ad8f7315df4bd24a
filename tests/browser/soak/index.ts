// Edits the built app for a long time and tells what grows: npm run soak -- [--minutes N] [--edits N] [--every ROUNDS]
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { chromium } from '@playwright/test';
import { preview } from 'vite';
import { browserLaunch } from '../browser';
import { freePort } from '../freePort';
import { type Growth, growthOf, soak } from './soak';

const { values } = parseArgs({
  options: { minutes: { type: 'string' }, edits: { type: 'string' }, every: { type: 'string', default: '1' } },
});
const [minutes, edits, every] = [values.minutes, values.edits, values.every].map((text) =>
  text === undefined ? undefined : Number(text),
);
if ([minutes, edits, every].some((number) => number !== undefined && !(number > 0)))
  throw new Error('--minutes, --edits and --every take a number above 0');

const root = fileURLToPath(new URL('../../..', import.meta.url));
const kept = await mkdtemp(join(tmpdir(), 'soak-'));
const server = await preview({ root, preview: { host: '127.0.0.1', port: await freePort(), strictPort: true } });
const browser = await chromium.launchPersistentContext(kept, {
  ...browserLaunch(),
  baseURL: server.resolvedUrls?.local[0] ?? '',
  viewport: { width: 1440, height: 900 },
});
try {
  const page = await browser.newPage();
  const errors: string[] = [];
  page.on('pageerror', ({ message }) => errors.push(message));
  const soaked = await soak(page, {
    minutes: minutes ?? (edits === undefined ? 20 : undefined),
    edits,
    every,
    told: (done, sample) =>
      console.log([done, ...Object.entries(sample).map(([what, value]) => `${what} ${Math.round(value)}`)].join(' | ')),
  });
  const growths = growthOf(soaked);
  console.log(`\n${soaked.edits} edits, ${soaked.samples.length} samples. Growth per 1000 edits, from the later half:`);
  for (const growth of growths) console.log(words(growth));
  for (const error of errors) console.log(`error on the page: ${error}`);
  process.exitCode = errors.length > 0 || growths.some(({ over }) => over) ? 1 : 0;
} finally {
  await browser.close();
  await server.close();
  await rm(kept, { recursive: true, force: true });
}

function words({ what, slope, error, last, bound, over }: Growth): string {
  const limit = bound === undefined ? 'no bound' : `at most ${bound}${over ? ': FAILS' : ''}`;
  return `${what}: ${slope.toFixed(1)} ± ${error.toFixed(1)} (standard error), now ${last.toFixed(0)}; ${limit}`;
}
