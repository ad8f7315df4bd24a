import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { browserLaunch } from './browser';
import { freePort } from './freePort';

// Worker processes read this file again and inherit the port.
process.env.NOOKWRIGHT_TEST_PORT ??= String(await freePort());
const port = process.env.NOOKWRIGHT_TEST_PORT;
const root = fileURLToPath(new URL('../..', import.meta.url));
const address = `http://127.0.0.1:${port}`;

export default defineConfig({
  testDir: '.',
  testMatch: '*.test.ts',
  outputDir: '../../test-results',
  snapshotPathTemplate: '{testDir}/kept/{arg}{ext}',
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  timeout: 180_000,
  expect: { timeout: 30_000 },
  reporter: 'list',
  use: {
    baseURL: `${address}/`,
    launchOptions: browserLaunch(),
    // Only the tests of working offline need one; in the others it would answer before a test's own routes.
    serviceWorkers: 'block',
    viewport: { width: 1440, height: 900 },
    screenshot: 'only-on-failure',
    // A trace films every step, which costs as much as some tests; `--trace on` makes one of a test in question.
    trace: process.env.CI ? 'off' : 'retain-on-failure',
  },
  webServer: {
    command: `npx vite preview --host 127.0.0.1 --port ${port} --strictPort`,
    cwd: root,
    url: address,
    timeout: 30_000,
  },
});
