import type { TableSeparator } from '../raw-scan';

const marks: Record<Exclude<TableSeparator, 'blank'>, string> = { comma: ',', semicolon: ';', tab: '\t', bar: '|' };

/** The fields of one line, without the blanks and quotes around each. */
export function lineFields(line: string, separator: TableSeparator): string[] {
  const fields = separator === 'blank' ? line.trim().split(/[ \t]+/) : line.split(marks[separator]);
  return fields.map((field) => field.trim().replace(/^"(.*)"$/, '$1'));
}

export const separatorCode = (separator: TableSeparator): number | 'blank' =>
  separator === 'blank' ? 'blank' : marks[separator].charCodeAt(0);
