import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** A script of this folder with all that it imports, as text that a page can run. */
export async function bundled(entry: URL): Promise<string> {
  const made = await build({
    configFile: false,
    root: fileURLToPath(new URL('../..', import.meta.url)),
    logLevel: 'silent',
    publicDir: false,
    build: { write: false, minify: false, lib: { entry: fileURLToPath(entry), formats: ['iife'], name: 'bundle' } },
  });
  const outputs = Array.isArray(made) ? made : [made];
  for (const output of outputs) {
    if (!('output' in output)) continue;
    for (const chunk of output.output) if (chunk.type === 'chunk') return chunk.code;
  }
  throw new Error(`nothing was made of ${entry}`);
}
