import {
  blocksOf,
  decimalAt,
  eachLine,
  isEmptyLine,
  type OnLine,
  type ReadingWatch,
  type ScanFile,
  startOfLine,
} from '../bytes';
import { ScanFault } from '../fault';
import type { PlyElement, PlyHeader } from './header';
import { ItemReader, type ItemTaker } from './item';

/** Reads the elements of an ASCII PLY file: an item per line, its values parted by blanks. */
export async function readAscii(
  file: ScanFile,
  watch: ReadingWatch,
  header: PlyHeader,
  elements: readonly { element: PlyElement; taker: ItemTaker }[],
): Promise<void> {
  let which = 0;
  while (elements[which]?.element.count === 0) which++;
  let left = elements[which]?.element.count ?? 0;
  let reader = elements[which] && new ItemReader(elements[which]!.element, elements[which]!.taker);
  let line = header.lines;
  /** holds back until another line shows that the file was not cut off in this one */
  let fault: ScanFault | null = null;
  const onLine: OnLine = (bytes, from, to) => {
    line++;
    if (!reader) return false;
    if (isEmptyLine(bytes, from, to)) return undefined;
    if (fault) throw fault;
    if (!readLine(reader, bytes, from, to)) {
      fault = new ScanFault(
        `Line ${line.toLocaleString('en')} of ${file.name} is no item "${reader.element.name}" ("${startOfLine(bytes, from, to)}"). The file is damaged: save the scan again.`,
      );
      return undefined;
    }
    if (--left > 0) return undefined;
    do which++;
    while (elements[which]?.element.count === 0);
    const next = elements[which];
    left = next?.element.count ?? 0;
    reader = next && new ItemReader(next.element, next.taker);
    return next !== undefined;
  };
  await eachLine(file, blocksOf(file, watch, { from: header.length }), onLine, header.lines);
  if (reader) {
    throw new ScanFault(
      `${file.name} ends too early, in line ${line.toLocaleString('en')}: ${left.toLocaleString('en')} of ${reader.element.count.toLocaleString('en')} items "${reader.element.name}" are missing. Copy the file again from the scanner.`,
    );
  }
}

function readLine(reader: ItemReader, bytes: Uint8Array, from: number, to: number): boolean {
  let at = from;
  const next = (): number => {
    while (at < to && bytes[at]! <= 32) at++;
    if (at >= to) return Number.NEGATIVE_INFINITY;
    const start = at;
    while (at < to && bytes[at]! > 32) at++;
    return decimalAt(bytes, start, at);
  };
  const { properties } = reader.element;
  for (let p = 0; p < properties.length; p++) {
    const value = next();
    if (value === Number.NEGATIVE_INFINITY) return false;
    if (properties[p]!.count === null) {
      reader.value(p, value);
      continue;
    }
    if (!(value >= 0 && value <= (to - from) / 2 + 1 && Number.isInteger(value))) return false;
    reader.listOf(p, value);
    for (let i = 0; i < value; i++) {
      const entry = next();
      if (entry === Number.NEGATIVE_INFINITY) return false;
      reader.listValue(p, i, entry);
    }
  }
  reader.done();
  return true;
}
