import type { CDPSession, Page } from '@playwright/test';

/** What a page holds on to, after everything that nobody needs any more is collected. */
export interface Live {
  /** JavaScript heap, bytes */
  heap: number;
  /** elements and other nodes of the page, detached ones too */
  nodes: number;
  listeners: number;
  /** buffers, textures, programs and the like in drawings that are not given up */
  gpu: number;
  /** addresses of blobs that are not revoked */
  blobs: number;
}

/** Counts what is made and given up in drawings and as addresses of blobs. Call it before the page is opened. */
export async function countThings(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const drawings: { context: WeakRef<WebGL2RenderingContext>; live: Set<unknown> }[] = [];
    const of = (context: WebGL2RenderingContext) => {
      const known = drawings.find((each) => each.context.deref() === context);
      if (known) return known.live;
      const live = new Set<unknown>();
      drawings.push({ context: new WeakRef(context), live });
      return live;
    };
    const proto = WebGL2RenderingContext.prototype as unknown as Record<string, (...args: unknown[]) => unknown>;
    for (const kind of ['Buffer', 'Texture', 'Program', 'Framebuffer', 'Renderbuffer', 'VertexArray']) {
      const [make, drop] = [proto[`create${kind}`]!, proto[`delete${kind}`]!];
      proto[`create${kind}`] = function (this: WebGL2RenderingContext, ...args) {
        const made = make.apply(this, args);
        of(this).add(made);
        return made;
      };
      proto[`delete${kind}`] = function (this: WebGL2RenderingContext, ...args) {
        of(this).delete(args[0]);
        return drop.apply(this, args);
      };
    }
    const blobs = new Set<string>();
    const { createObjectURL, revokeObjectURL } = URL;
    URL.createObjectURL = (blob) => {
      const address = createObjectURL.call(URL, blob);
      blobs.add(address);
      return address;
    };
    URL.revokeObjectURL = (address) => {
      blobs.delete(address);
      revokeObjectURL.call(URL, address);
    };
    Object.assign(window, {
      live: () => ({
        gpu: drawings
          .filter(({ context }) => context.deref()?.isContextLost() === false)
          .reduce((sum, { live }) => sum + live.size, 0),
        blobs: blobs.size,
      }),
    });
  });
}

export async function liveThings(page: Page, browser: CDPSession): Promise<Live> {
  await browser.send('HeapProfiler.enable');
  await browser.send('HeapProfiler.collectGarbage');
  await browser.send('HeapProfiler.collectGarbage');
  const { usedSize } = await browser.send('Runtime.getHeapUsage');
  const { nodes, jsEventListeners } = await browser.send('Memory.getDOMCounters');
  const { gpu, blobs } = await page.evaluate(() =>
    (window as unknown as { live(): Pick<Live, 'gpu' | 'blobs'> }).live(),
  );
  return { heap: usedSize, nodes, listeners: jsEventListeners, gpu, blobs };
}
