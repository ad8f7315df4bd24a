import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import type { OutputFonts } from '../output';

const locate = createRequire(import.meta.url).resolve;

/** The job pack's fonts from the installed package. */
export async function fontsFromDisk(): Promise<OutputFonts> {
  const [regular, bold] = await Promise.all([
    readFile(locate('dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf')),
    readFile(locate('dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf')),
  ]);
  return { regular, bold };
}
