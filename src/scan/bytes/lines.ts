import { ScanFault } from '../fault';
import type { ScanFile } from './source';

const LF = 10;
const CR = 13;
const longestLine = 1_000_000;

/** Takes the line that lies in `bytes` from `from` up to, not including, `to`. Gives `false` to read no further. */
export type OnLine = (bytes: Uint8Array, from: number, to: number) => boolean | undefined;

/**
 * Hands on the lines of a text as they come in blocks; a line ends with LF, CR or CR LF. Nothing is kept but what is
 * left of a line at the end of a block.
 * @param before lines of the file that stand before the first block
 * @throws ScanFault that names the line where one is too long to be a point
 */
export async function eachLine(
  file: ScanFile,
  blocks: AsyncIterable<Uint8Array<ArrayBuffer>>,
  onLine: OnLine,
  before = 0,
): Promise<void> {
  let rest: Uint8Array = new Uint8Array(0);
  let whole = before;
  for await (const block of blocks) {
    const bytes = rest.length === 0 ? block : joined(rest, block);
    let from = 0;
    for (;;) {
      const end = endOfLine(bytes, from);
      if (end === bytes.length || (bytes[end] === CR && end + 1 === bytes.length)) break;
      whole++;
      if (onLine(bytes, from, end) === false) return;
      from = bytes[end] === CR && bytes[end + 1] === LF ? end + 2 : end + 1;
    }
    rest = bytes.subarray(from);
    if (rest.length > longestLine) {
      throw new ScanFault(
        `Line ${(whole + 1).toLocaleString('en')} of ${file.name} has more than ${longestLine.toLocaleString('en')} characters, so it is no point. Save the scan as PLY and try again.`,
      );
    }
  }
  if (rest.length > 0) onLine(rest, 0, rest.at(-1) === CR ? rest.length - 1 : rest.length);
}

function endOfLine(bytes: Uint8Array, from: number): number {
  for (let i = from; i < bytes.length; i++) {
    const byte = bytes[i]!;
    if (byte === LF || byte === CR) return i;
  }
  return bytes.length;
}

function joined(first: Uint8Array, second: Uint8Array): Uint8Array {
  const both = new Uint8Array(first.length + second.length);
  both.set(first);
  both.set(second, first.length);
  return both;
}
