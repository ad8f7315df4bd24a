import { blocksOf, type ReadingWatch, type ScanFile } from '../bytes';
import { ScanFault } from '../fault';
import type { PlyElement } from './header';
import { ItemReader, type ItemTaker } from './item';
import { scalarBytes, scalarReader } from './scalar';

/** A list of more is taken for damage. */
const longestList = 100_000;

/**
 * Reads elements whose items may vary in length, one after the other.
 * @throws ScanFault that names the item and the byte where the file is damaged or ends
 */
export async function readUneven(
  file: ScanFile,
  watch: ReadingWatch,
  from: number,
  little: boolean,
  elements: readonly { element: PlyElement; taker: ItemTaker }[],
): Promise<void> {
  let rest = new Uint8Array(0);
  /** byte of the file that the bytes at hand begin at */
  let begin = from;
  let which = 0;
  let left = elements[0]?.element.count ?? 0;
  let parse = elements[0] && itemParser(file, elements[0], little);
  for await (const block of blocksOf(file, watch, { from })) {
    const bytes = new Uint8Array(rest.length + block.length);
    bytes.set(rest);
    bytes.set(block, rest.length);
    const view = new DataView(bytes.buffer);
    let at = 0;
    while (parse) {
      if (left === 0) {
        const next = elements[++which];
        left = next?.element.count ?? 0;
        parse = next && itemParser(file, next, little);
        continue;
      }
      const end = parse(view, at, begin, left);
      if (end < 0) break;
      at = end;
      left--;
    }
    if (!parse) return;
    rest = bytes.slice(at);
    begin += at;
  }
  while (left === 0 && which < elements.length) left = elements[++which]?.element.count ?? 0;
  const lacking = elements[which]?.element;
  if (lacking) {
    throw new ScanFault(
      `${file.name} ends too early, in ${itemAt(lacking, left, begin)}: ${left.toLocaleString('en')} of ${lacking.count.toLocaleString('en')} items "${lacking.name}" are missing. Copy the file again from the scanner.`,
    );
  }
}

const itemAt = ({ name, count }: PlyElement, left: number, byte: number): string =>
  `item ${(count - left + 1).toLocaleString('en')} "${name}" at byte ${(byte + 1).toLocaleString('en')}`;

/**
 * Reads the item at a place; gives the place after it, or -1 where it is not whole yet. To say where a fault is, it takes
 * the byte of the file that the view begins at and how many items, this one among them, are left.
 */
function itemParser(
  file: ScanFile,
  { element, taker }: { element: PlyElement; taker: ItemTaker },
  little: boolean,
): (view: DataView, at: number, begin: number, left: number) => number {
  const reader = new ItemReader(element, taker);
  const readers = element.properties.map(({ type, count }) => ({
    read: scalarReader(type, little),
    size: scalarBytes[type],
    readCount: count && scalarReader(count, little),
    countSize: count ? scalarBytes[count] : 0,
  }));
  return (view, start, begin, left) => {
    let at = start;
    for (let p = 0; p < readers.length; p++) {
      const { read, size, readCount, countSize } = readers[p]!;
      if (!readCount) {
        if (at + size > view.byteLength) return -1;
        reader.value(p, read(view, at));
        at += size;
        continue;
      }
      if (at + countSize > view.byteLength) return -1;
      const count = readCount(view, at);
      if (!(count >= 0 && count <= longestList && Number.isInteger(count))) {
        throw new ScanFault(
          `${file.name} is damaged in ${itemAt(element, left, begin + start)}: its list "${element.properties[p]!.name}" claims to hold ${count.toLocaleString('en')} values. Copy the file again from the scanner.`,
        );
      }
      at += countSize;
      if (at + count * size > view.byteLength) return -1;
      reader.listOf(p, count);
      for (let i = 0; i < count; i++, at += size) reader.listValue(p, i, read(view, at));
    }
    reader.done();
    return at;
  };
}
