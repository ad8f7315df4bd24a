import { type DisplayUnit, type Point, parseLength } from '../../../core';

export type GaugeText = { ok: true; points: Point[] } | { ok: false; message: string };

/** A line of a contour gauge as text, a point a line: how far out, then how far up (down with a minus). */
export function gaugeText(text: string, unit: DisplayUnit): GaugeText {
  const points: Point[] = [];
  for (const [i, line] of text.split(/\r?\n/).entries()) {
    if (line.trim() === '') continue;
    const parts = partsOf(line.trim());
    if (parts === null)
      return fault(i, `"${line.trim()}" is not two lengths; write how far out, a semicolon, and how far up or down`);
    const [out, up] = parts.map((part) => parseLength(part, unit));
    if (!out!.ok) return fault(i, out!.message);
    if (!up!.ok) return fault(i, up!.message);
    points.push([out!.mm, up!.mm]);
  }
  return points.length < 2
    ? { ok: false, message: 'A contour needs at least two points, one a line.' }
    : { ok: true, points };
}

const fault = (line: number, message: string): GaugeText => ({ ok: false, message: `Line ${line + 1}: ${message}.` });

/** Two lengths, parted by a semicolon, a tab, a comma or, where nothing else parts them, a space. */
function partsOf(line: string): [string, string] | null {
  for (const separator of [';', '\t', /,\s+/, ',', /\s{2,}/, /\s+/]) {
    const parts = line.split(separator);
    if (parts.length === 2) return [parts[0]!.trim(), parts[1]!.trim()];
    if (parts.length > 2) return null;
  }
  return null;
}
