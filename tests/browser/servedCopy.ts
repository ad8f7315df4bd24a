import { cp, mkdtemp, readdir, readFile, rename, rm, writeFile } from 'node:fs/promises';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

const types: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.png': 'image/png',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
};

/** A copy of the built app on a server of its own, which can be changed like a new build and switched off. */
export async function servedCopy() {
  const folder = await mkdtemp(join(tmpdir(), 'built-'));
  await cp(fileURLToPath(new URL('../../dist', import.meta.url)), folder, { recursive: true });
  const server = createServer(async ({ url = '/' }, response) => {
    const path = new URL(url, 'http://x').pathname.replace(/\/$/, '/index.html');
    try {
      const body = await readFile(join(folder, path));
      response.writeHead(200, {
        'content-type': types[extname(path)] ?? 'application/octet-stream',
        'cache-control': 'no-cache',
      });
      response.end(body);
    } catch {
      response.writeHead(404).end();
    }
  });
  await new Promise<void>((ready) => server.listen(0, '127.0.0.1', ready));
  const { port } = server.address() as { port: number };
  const close = () =>
    new Promise<void>((done) => {
      server.closeAllConnections();
      server.close(() => done());
    });
  return {
    address: `http://127.0.0.1:${port}/`,
    /** Publishes a build whose page has another title line. */
    publish: async (mark: string) => {
      const page = join(folder, 'index.html');
      await writeFile(
        page,
        (await readFile(page, 'utf8')).replace('<div id="root">', `<div id="root" data-build="${mark}">`),
      );
      const worker = join(folder, 'sw.js');
      const text = await readFile(worker, 'utf8');
      const next = text.replace(
        /(url:"index\.html",revision:")[^"]*|(revision:")[^"]*(",url:"index\.html")/,
        `$1$2${mark}$3`,
      );
      if (next === text) throw new Error('the service worker does not list index.html');
      await writeFile(worker, next);
    },
    /** Publishes a build in which every script and style has another name, as if all had changed; the old ones go. */
    publishAllNew: async (mark: string) => {
      const assets = join(folder, 'assets');
      const names = (await readdir(assets)).filter((name) => /\.(js|css|wasm|ttf)$/.test(name));
      const files = [...names.map((name) => join(assets, name)), join(folder, 'index.html'), join(folder, 'sw.js')];
      for (const file of files.filter((each) => /\.(js|css|html)$/.test(each))) {
        let text = await readFile(file, 'utf8');
        for (const name of names) text = text.replaceAll(name, `${mark}-${name}`);
        await writeFile(file, text.replace('<div id="root">', `<div id="root" data-build="${mark}">`));
      }
      const worker = join(folder, 'sw.js');
      const text = await readFile(worker, 'utf8');
      await writeFile(
        worker,
        text.replace(/(url:"index\.html",revision:")[^"]*|(revision:")[^"]*(",url:"index\.html")/, `$1$2${mark}$3`),
      );
      for (const name of names) await rename(join(assets, name), join(assets, `${mark}-${name}`));
    },
    switchOff: close,
    remove: async () => {
      await close().catch(() => undefined);
      await rm(folder, { recursive: true, force: true });
    },
  };
}
