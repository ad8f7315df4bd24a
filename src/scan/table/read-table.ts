import { blocksOf, bytesOf, eachLine, isEmptyLine, numbersIn, type ReadingWatch, type ScanFile } from '../bytes';
import { ScanFault } from '../fault';
import { isPlace } from '../is-place';
import type { ScanLimits } from '../limits';
import { PointStore } from '../point-store';
import type { RawScan, TableLayout } from '../raw-scan';
import { rawScanOf } from '../raw-scan-of';
import { guessLayout, isComment } from './guess-layout';
import { separatorCode } from './line-fields';
import { unitInNames } from './unit-in-names';

const guessedFrom = 65_536;
/** Fewer bytes than this make no line of three numbers. */
const shortestLine = 6;

/**
 * Reads a text with a point per line.
 * @param asked how its lines make points, where the person said so
 */
export async function readTable(
  file: ScanFile,
  watch: ReadingWatch,
  limits: ScanLimits,
  asked: TableLayout | null = null,
): Promise<RawScan> {
  const start = await bytesOf(file, 0, Math.min(file.size, guessedFrom));
  const text = textOf(file, start);
  const lines = text.split(/\r\n|\n|\r/);
  if (file.size > guessedFrom) lines.pop();
  const guessed = guessLayout(lines);
  if (!guessed) {
    throw new ScanFault(
      `No line of ${file.name} up to line ${toldLines(lines)} holds three numbers. A point per line is needed, as in "1.204 0.310 2.050"; or save the scan as PLY.`,
    );
  }
  const layout = { ...guessed, ...asked };
  const store = new PointStore(limits.points, file.size / 20);
  const marks = { separator: separatorCode(layout.separator), point: layout.decimal === 'comma' ? 44 : 46 };
  const out = new Float64Array(3);
  const firstBad = { line: 0, text: '' };
  let [line, bad] = [0, 0];
  let begun = false;
  await eachLine(file, blocksOf(file, watch), (bytes, from, to) => {
    line++;
    if (to - from < shortestLine - 1 && isEmptyLine(bytes, from, to)) return;
    if (numbersIn(bytes, from, to, marks, layout.columns, out) && isPlace(out[0]!, out[1]!, out[2]!)) {
      begun = true;
      store.add(out[0]!, out[1]!, out[2]!);
      return;
    }
    const words = String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 60)));
    // Names and counts above the numbers are no points that are missing.
    if (!begun || words.trim() === '' || isComment(words)) return;
    if (bad++ === 0) [firstBad.line, firstBad.text] = [line, words.replace(/[^\x20-\x7e]/g, '?')];
  });
  if (bad > 100 && bad > store.seen / 4) {
    throw new ScanFault(
      `${bad.toLocaleString('en')} lines of ${file.name} are no points, the first is line ${firstBad.line.toLocaleString('en')} ("${firstBad.text}"). See that the columns are right, or save the scan as PLY.`,
    );
  }
  return rawScanOf({
    format: 'text',
    store,
    unread: bad,
    table: layout,
    unit: unitInNames(layout.names),
  });
}

/** How many lines there are, as words; what follows the last line's end is none. */
const toldLines = (lines: readonly string[]): string =>
  Math.max(1, lines.at(-1) === '' ? lines.length - 1 : lines.length).toLocaleString('en');

function textOf({ name }: ScanFile, start: Uint8Array): string {
  if ((start[0] === 0xff && start[1] === 0xfe) || (start[0] === 0xfe && start[1] === 0xff)) {
    throw new ScanFault(`${name} is saved as UTF-16. Save it again as plain text (UTF-8).`);
  }
  const zero = start.indexOf(0);
  if (zero >= 0) {
    throw new ScanFault(
      `${name} is no text with a point per line, but a binary file: byte ${(zero + 1).toLocaleString('en')} is no character. Save the scan as PLY, GLB, OBJ or XYZ.`,
    );
  }
  return new TextDecoder().decode(start);
}
