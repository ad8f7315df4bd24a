import { spawnSync } from 'node:child_process';
import { accessSync, constants, statSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { chromium } from '@playwright/test';
import type { Machine } from './findBrowser';

/** The machine that the tests run on. */
export const thisMachine: Machine = {
  platform: process.platform,
  arch: process.arch,
  env: process.env,
  isProgram,
  runnersOwn() {
    try {
      return chromium.executablePath();
    } catch {
      return null;
    }
  },
  unpack() {
    const script = fileURLToPath(new URL('./unpackBrowser.mjs', import.meta.url));
    const run = spawnSync(process.execPath, [script], { encoding: 'utf8' });
    if (run.status === 0) return JSON.parse(run.stdout) as ReturnType<Machine['unpack']>;
    process.stderr.write(`The packaged browser could not be unpacked.\n${run.stderr}`);
    return null;
  },
};

function isProgram(path: string): boolean {
  try {
    accessSync(path, constants.X_OK);
    return statSync(path).isFile();
  } catch {
    return false;
  }
}
