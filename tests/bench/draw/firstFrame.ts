import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Browser } from '@playwright/test';
import { build, preview } from 'vite';
import { bundled } from '../../browser/bundle';
import { freePort } from '../../browser/freePort';
import { scriptOnOpening } from '../../browser/scriptOnOpening';

const root = fileURLToPath(new URL('../../..', import.meta.url));

export interface FirstFrameTimes {
  /** gzipped script that opening fetches while nobody touches the page, bytes */
  scriptBytes: number;
  /** the finished alcove in 3D */
  alcove: number[];
  /** the plain picture that stands there before */
  picture: number[];
  /** a page that draws one lit box with three.js and nothing else */
  bare: number[];
}

interface Seen {
  frame: number | null;
  picture: number | null;
}
declare global {
  interface Window {
    seen: Seen;
  }
}

/**
 * Milliseconds from opening a page to its first frame, each time in a browser profile that has fetched nothing yet. All
 * pages come from one server and take turns. The alcove's page is touched as soon as it listens.
 */
export async function firstFrameTimes(browser: Browser, rounds: number): Promise<FirstFrameTimes> {
  const outDir = mkdtempSync(join(tmpdir(), 'nookwright-bench-'));
  await build({ root, logLevel: 'silent', build: { outDir, emptyOutDir: true } });
  writeFileSync(join(outDir, 'bare.js'), await bundled(new URL('./bare.ts', import.meta.url)));
  writeFileSync(join(outDir, 'bare.html'), '<!doctype html><title>bare</title><body><script src="bare.js"></script>');
  const server = await preview({
    root,
    logLevel: 'silent',
    build: { outDir },
    preview: { host: '127.0.0.1', port: await freePort(), strictPort: true },
  });
  try {
    const address = server.resolvedUrls?.local[0] ?? '';
    const scriptBytes = await untouched(browser, address);
    const times: FirstFrameTimes = { scriptBytes, alcove: [], picture: [], bare: [] };
    for (let round = 0; round < rounds; round++) {
      const alcove = await opened(browser, `${address}#client/look`);
      times.alcove.push(alcove.frame!);
      times.picture.push(alcove.picture!);
      times.bare.push((await opened(browser, `${address}bare.html`)).frame!);
    }
    return times;
  } finally {
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  }
}

async function untouched(browser: Browser, address: string): Promise<number> {
  const context = await browser.newContext({ serviceWorkers: 'block' });
  try {
    return (await scriptOnOpening(await context.newPage(), address)).bytes;
  } finally {
    await context.close();
  }
}

async function opened(browser: Browser, address: string): Promise<Seen> {
  const context = await browser.newContext({ viewport: { width: 1024, height: 768 }, serviceWorkers: 'block' });
  try {
    const page = await context.newPage();
    await page.addInitScript(watchFrames);
    await page.goto(address);
    await page.waitForFunction(() => window.seen.frame !== null, undefined, { timeout: 120_000 });
    return await page.evaluate(() => window.seen);
  } finally {
    await context.close();
  }
}

/** In the page: notes when the first triangles that reach the screen are drawn, and when the plain picture stands there. */
function watchFrames(): void {
  window.seen = { frame: null, picture: null };
  const { seen } = window;
  const prototype = WebGL2RenderingContext.prototype;
  for (const name of ['drawElements', 'drawArrays'] as const) {
    const draw = prototype[name] as (...given: unknown[]) => void;
    prototype[name] = function (this: WebGL2RenderingContext, ...given: unknown[]) {
      draw.apply(this, given);
      if (seen.frame !== null || this.getParameter(this.FRAMEBUFFER_BINDING) !== null) return;
      seen.frame = Number.POSITIVE_INFINITY;
      queueMicrotask(() => {
        this.readPixels(0, 0, 1, 1, this.RGBA, this.UNSIGNED_BYTE, new Uint8Array(4));
        seen.frame = performance.now();
      });
    };
  }
  const look = setInterval(() => {
    window.dispatchEvent(new Event('pointermove'));
    if (seen.picture === null && document.querySelector('[data-testid="finished"] svg'))
      seen.picture = performance.now();
    if (seen.frame !== null) clearInterval(look);
  }, 4);
}
