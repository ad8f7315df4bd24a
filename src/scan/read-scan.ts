import { bytesOf, type ReadingWatch, type ScanFile } from './bytes';
import { ScanFault, ScanStopped } from './fault';
import { formatOf } from './format-of';
import { readGltf } from './gltf';
import { fewestPoints, type ScanLimits, scanLimits } from './limits';
import { readObj } from './obj';
import { readPly } from './ply';
import type { RawScan, TableLayout } from './raw-scan';
import { readTable } from './table';

export interface ReadingOptions extends ReadingWatch {
  /** files that came with it, such as the .bin beside a .gltf */
  others?: readonly ScanFile[];
  /** how the lines of a text make points, where the person said so */
  table?: TableLayout | null;
  limits?: ScanLimits;
}

/** A scan; or a sentence that says what is wrong with the file, where, and what to do; or that reading was stopped. */
export type ScanRead = { ok: true; scan: RawScan } | { ok: false; stopped: boolean; message: string };

/** Reads a file of points or of a mesh. Never rejects for what the file holds. */
export async function readScan(file: ScanFile, options: ReadingOptions = {}): Promise<ScanRead> {
  const limits = options.limits ?? scanLimits;
  try {
    const scan = await readFormat(file, options, limits);
    const count = scan.positions.length / 3;
    if (count < fewestPoints) throw new ScanFault(tooFew(file, scan, count));
    return { ok: true, scan };
  } catch (error) {
    if (error instanceof ScanStopped) return { ok: false, stopped: true, message: 'Reading was stopped.' };
    if (error instanceof ScanFault) return { ok: false, stopped: false, message: error.message };
    if (error instanceof RangeError) {
      const message = `There is not enough memory here for ${file.name}. Close other pages, or save the scan with fewer points.`;
      return { ok: false, stopped: false, message };
    }
    throw error;
  }
}

async function readFormat(file: ScanFile, options: ReadingOptions, limits: ScanLimits): Promise<RawScan> {
  if (file.size === 0) throw new ScanFault(`${file.name} is empty. Copy it again from the scanner.`);
  if (file.size > limits.file) {
    throw new ScanFault(
      `${file.name} has ${(file.size / 1e9).toFixed(1)} GB; ${limits.file / 1e9} GB is the most. Save the scan of the alcove alone.`,
    );
  }
  switch (formatOf(file, await bytesOf(file, 0, Math.min(file.size, 16)))) {
    case 'PLY':
      return readPly(file, options, limits);
    case 'OBJ':
      return readObj(file, options, limits);
    case 'glTF':
      return readGltf(file, options, limits, options.others ?? []);
    case 'text':
      return readTable(file, options, limits, options.table);
  }
}

function tooFew({ name }: ScanFile, { unread, atZero }: RawScan, count: number): string {
  const lost = [
    unread > 0 && `${unread.toLocaleString('en')} are not numbers`,
    atZero > 0 && `${atZero.toLocaleString('en')} are at 0, 0, 0`,
  ].filter(Boolean);
  const besides = lost.length > 0 ? ` (${lost.join(', ')})` : '';
  return `${name} holds ${count === 0 ? 'no' : `only ${count.toLocaleString('en')}`} usable points${besides}; an alcove takes at least ${fewestPoints.toLocaleString('en')}. Scan it again, or save all of its points.`;
}
