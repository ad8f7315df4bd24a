import regularUrl from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed.ttf?url';
import boldUrl from 'dejavu-fonts-ttf/ttf/DejaVuSansCondensed-Bold.ttf?url';
import type { OutputFonts } from './outputFonts';

/** The job pack's fonts as the app serves them from its own host. Browser only. */
export async function browserFonts(): Promise<OutputFonts> {
  const [regular, bold] = await Promise.all([load(regularUrl), load(boldUrl)]);
  return { regular, bold };
}

async function load(url: string): Promise<Uint8Array> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`The font for printing could not be read (${response.status}).`);
  return new Uint8Array(await response.arrayBuffer());
}
