import { type ReadingOptions, readScan } from '../../../src/scan';

/** A file in memory. */
export const fileOf = (name: string, ...parts: (string | Uint8Array<ArrayBuffer>)[]): File => new File(parts, name);

/** The scan that a file holds; throws where it is refused. */
export async function scanIn(file: File, options: ReadingOptions = {}) {
  const read = await readScan(file, options);
  if (!read.ok) throw new Error(read.message);
  return read.scan;
}

export async function messageOf(file: File, options: ReadingOptions = {}): Promise<string> {
  const read = await readScan(file, options);
  if (read.ok) throw new Error('it was read');
  return read.message;
}

/** x y z in the file's axes and unit, the origin put back. */
export function coordinates({
  positions,
  origin,
}: {
  positions: Float32Array;
  origin: readonly [number, number, number];
}): number[] {
  return Array.from(positions, (value, at) => value + origin[at % 3]!);
}

/** Points that differ in every coordinate, none at zero. */
export function samplePoints(count: number): [number, number, number][] {
  return Array.from({ length: count }, (_, i) => [
    0.25 + ((i * 37) % 101) / 64,
    -1 + ((i * 53) % 97) / 32,
    2 + i / 1024,
  ]);
}
