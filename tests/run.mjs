// Runs every check and every test, and ends with the line `N passed, N failed`. Plain Node, so that it can also tell
// that the packages are not installed. Tests are counted from the runners' own JSON reports; a part that fails
// without naming a failed test counts as one failure.
import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { countsOfPart, playwrightCounts, vitestCounts } from './counts.mjs';

const root = fileURLToPath(new URL('..', import.meta.url));
const reports = `node_modules/.cache/tests-${process.pid}`;
const vitestReport = `${reports}/vitest.json`;
const browserReport = `${reports}/browser.json`;

const parts = [
  { name: 'typecheck', steps: [['npm', 'run', '--silent', 'typecheck']] },
  { name: 'lint', steps: [['npm', 'run', '--silent', 'lint']] },
  {
    name: 'unit, property and reference tests',
    steps: [['npx', 'vitest', 'run', '--reporter=default', '--reporter=json', `--outputFile.json=${vitestReport}`]],
    count: () => vitestCounts(read(vitestReport)),
  },
  {
    name: 'build and browser tests',
    steps: [
      ['npm', 'run', '--silent', 'build'],
      ['npx', 'playwright', 'test', '--config', 'tests/browser/playwright.config.ts', '--reporter=list,json'],
    ],
    count: () => playwrightCounts(read(browserReport)),
  },
];

process.exitCode = existsSync(join(root, 'node_modules')) ? main() : notInstalled();
rmSync(join(root, reports), { recursive: true, force: true });

function main() {
  const total = { passed: 0, failed: 0, skipped: 0 };
  const lines = [];
  for (const part of parts) {
    process.stdout.write(`\n== ${part.name}\n`);
    const began = performance.now();
    const ok = part.steps.every(run);
    const counted = countsOfPart(part.count?.() ?? null, ok);
    for (const key of Object.keys(total)) total[key] += counted[key];
    lines.push(`${counted.failed === 0 ? 'ok  ' : 'FAIL'} ${part.name}: ${words(counted, part)}, ${seconds(began)} s`);
  }
  process.stdout.write(`\n${lines.join('\n')}\n\n${total.passed} passed, ${total.failed} failed\n`);
  return total.failed === 0 ? 0 : 1;
}

function words({ passed, failed, skipped }, { count }) {
  if (!count) return failed === 0 ? 'nothing to mend' : 'something to mend';
  return `${passed} passed, ${failed} failed${skipped > 0 ? `, ${skipped} skipped` : ''}`;
}

function run([command, ...args]) {
  const { status } = spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    shell: process.platform === 'win32',
    env: { ...process.env, CI: '1', PLAYWRIGHT_JSON_OUTPUT_FILE: join(root, browserReport) },
  });
  return status === 0;
}

/** A report, or null where its runner wrote none. */
function read(report) {
  const path = join(root, report);
  return existsSync(path) ? JSON.parse(readFileSync(path, 'utf8')) : null;
}

function seconds(began) {
  return ((performance.now() - began) / 1000).toFixed(1);
}

function notInstalled() {
  process.stderr.write('The packages are not installed. Run: npm ci && npm test\n');
  return 2;
}
