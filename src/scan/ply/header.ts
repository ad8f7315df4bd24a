import { ScanFault } from '../fault';
import type { Up } from '../raw-scan';
import { type ScalarType, scalarTypeOf } from './scalar';

export interface PlyProperty {
  name: string;
  type: ScalarType;
  /** type of the count that comes before the values of a list; null for a single value */
  count: ScalarType | null;
}

export interface PlyElement {
  name: string;
  count: number;
  properties: PlyProperty[];
}

export interface PlyHeader {
  encoding: 'ascii' | 'little' | 'big';
  elements: PlyElement[];
  /** bytes before the first value */
  length: number;
  /** lines before the first value */
  lines: number;
  up: Up | null;
}

const longestHeader = 65_536;
const lineEnd = /\r\n|\n|\r/;
const encodings = { ascii: 'ascii', binary_little_endian: 'little', binary_big_endian: 'big' } as const;

/**
 * Reads the head of a PLY file (Turk, "The PLY polygon file format", 1994).
 * @param start the first bytes of the file
 */
export function plyHeader(name: string, start: Uint8Array): PlyHeader {
  const text = new TextDecoder('latin1').decode(start.subarray(0, longestHeader));
  const end = /(?:^|[\r\n])end_header[ \t]*(\r\n|\n|\r)/.exec(text);
  if (!end) {
    const last = text.trimEnd().split(lineEnd).length.toLocaleString('en');
    throw new ScanFault(
      `The head of ${name} has no end: no line up to line ${last} is "end_header". The file is cut off or is no PLY file: copy it again from the scanner.`,
    );
  }
  const length = end.index + end[0].length;
  const lines = text.slice(0, length).split(lineEnd);
  const fault = (line: number, why: string) =>
    new ScanFault(
      `Line ${line + 1} in the head of ${name} ("${lines[line]!.slice(0, 60)}") ${why}. Save the scan again.`,
    );

  let encoding: PlyHeader['encoding'] | null = null;
  let up: Up | null = null;
  const elements: PlyElement[] = [];
  for (const [at, line] of lines.entries()) {
    const [keyword = '', ...words] = line.trim().split(/\s+/);
    if (keyword === 'format') {
      encoding = encodings[words[0] as keyof typeof encodings] ?? null;
      if (encoding === null) throw fault(at, 'names a format other than ascii or binary');
    } else if (keyword === 'comment' || keyword === 'obj_info') {
      up ??= upIn(line);
    } else if (keyword === 'element') {
      const count = Number(words[1]);
      if (!Number.isSafeInteger(count) || count < 0) throw fault(at, 'gives no count');
      elements.push({ name: words[0]!, count, properties: [] });
    } else if (keyword === 'property') {
      const element = elements.at(-1);
      if (!element) throw fault(at, 'stands before any element');
      const list = words[0] === 'list';
      const count = list ? scalarTypeOf(words[1]) : null;
      const type = scalarTypeOf(list ? words[2] : words[0]);
      const property = words[list ? 3 : 1];
      if (!type || (list && !count) || property === undefined) throw fault(at, 'names a type that PLY does not have');
      element.properties.push({ name: property, type, count });
    }
  }
  if (encoding === null)
    throw new ScanFault(
      `Line 2 in the head of ${name} ("${lines[1]!.slice(0, 60)}") should name the format, and no other line does. Save the scan again as PLY.`,
    );
  return { encoding, elements, length, lines: lines.length - 1, up };
}

/** A remark such as "z up" or "up axis: +y". */
function upIn(comment: string): Up | null {
  const found = /\b([xyz])[- _]?up\b|\bup[- _]?(?:axis|vector)?\s*[:=]?\s*(-?|\+?)([xyz])\b/i.exec(comment);
  const axis = (found?.[1] ?? found?.[3])?.toLowerCase();
  return axis ? (`${found?.[2] === '-' ? '-' : '+'}${axis}` as Up) : null;
}
