import { ScanFault, ScanStopped } from '../fault';

/** A file as far as it is needed here; a browser's `File` is one. */
export interface ScanFile {
  readonly name: string;
  /** bytes */
  readonly size: number;
  slice(from: number, to: number): { arrayBuffer(): Promise<ArrayBuffer> };
}

export interface ReadingWatch {
  /** @param share of the file that is read, 0 to 1 */
  onProgress?: (share: number) => void;
  cancelled?: () => boolean;
}

/** Large enough that waiting for each costs nothing, small enough that stopping is felt at once. */
export const blockBytes = 4 * 1024 * 1024;

/**
 * The bytes of part of a file, in blocks.
 * @param multipleOf each block but perhaps the last holds a whole number of these many bytes
 * @returns each block at offset 0 of a buffer of its own
 */
export async function* blocksOf(
  file: ScanFile,
  { onProgress, cancelled }: ReadingWatch,
  { from = 0, to = file.size, multipleOf = 1 } = {},
): AsyncGenerator<Uint8Array<ArrayBuffer>> {
  const length = Math.max(multipleOf, blockBytes - (blockBytes % multipleOf));
  for (let at = from; at < to; at += length) {
    if (cancelled?.()) throw new ScanStopped();
    yield await bytesOf(file, at, Math.min(to, at + length));
    onProgress?.(Math.min(1, (at + length) / file.size));
  }
}

export async function bytesOf(file: ScanFile, from: number, to: number): Promise<Uint8Array<ArrayBuffer>> {
  let buffer: ArrayBuffer;
  try {
    buffer = await file.slice(from, to).arrayBuffer();
  } catch {
    throw new ScanFault(
      `${file.name} can no longer be read. It may have been moved, changed or removed since it was chosen: choose it again.`,
    );
  }
  if (buffer.byteLength < to - from) {
    throw new ScanFault(`${file.name} became shorter while it was read. Wait until it is copied whole and try again.`);
  }
  return new Uint8Array(buffer);
}
