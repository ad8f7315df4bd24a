// Unpacks the packaged Chromium below node_modules/.cache and prints where it is: { path, env }. A process of its own,
// since the package takes its folders and its libraries from environment variables.
import { existsSync, mkdirSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const { LD_LIBRARY_PATH, FONTCONFIG_PATH } = process.env;
const kept = fileURLToPath(new URL('../../node_modules/.cache/nookwright-browser/', import.meta.url));

if (!existsSync(join(kept, 'chromium'))) {
  const fresh = `${kept.replace(/[\\/]$/, '')}-${process.pid}`;
  mkdirSync(fresh, { recursive: true });
  process.env.TMPDIR = fresh;
  // Makes the package unpack the libraries that a bare machine lacks as well.
  process.env.AWS_EXECUTION_ENV = 'nodejs20.x';
  const { default: chromium } = await import('@sparticuz/chromium');
  await chromium.executablePath();
  // Its own list of folders does not know this one.
  const fonts = `<fontconfig><dir>${join(kept, 'fonts')}</dir><cachedir>${join(kept, 'font-cache')}</cachedir></fontconfig>`;
  writeFileSync(join(fresh, 'fonts', 'fonts.conf'), `<?xml version="1.0"?>\n${fonts}\n`);
  try {
    renameSync(fresh, kept);
  } catch (error) {
    if (!existsSync(join(kept, 'chromium'))) throw error;
    rmSync(fresh, { recursive: true, force: true });
  }
}

const env = { LD_LIBRARY_PATH: [LD_LIBRARY_PATH, join(kept, 'al2023', 'lib')].filter(Boolean).join(':') };
if (!FONTCONFIG_PATH && !existsSync('/etc/fonts/fonts.conf')) env.FONTCONFIG_PATH = join(kept, 'fonts');
process.stdout.write(JSON.stringify({ path: join(kept, 'chromium'), env }));
