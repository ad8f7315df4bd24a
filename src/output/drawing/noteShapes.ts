import { type Shape, words } from './shape';
import { shapeBounds } from './shapeBounds';
import { type MeasureText, wrapText } from './textWidth';

/** What is said under a template. */
export interface Told {
  title: string;
  statement: string;
  notes: string[];
}

/** Title, which side is up, and sentences under the shapes drawn before, between two uprights. */
export function noteShapes(
  { title, statement, notes }: Told,
  [left, right]: [number, number],
  above: Shape[],
  size: number,
  measure: MeasureText,
): Shape[] {
  const around = shapeBounds(above, measure);
  const leading = 1.45 * size;
  let y = around.bottom - 4 * size;
  const lines: Shape[] = [words(title, [left, y], 1.8 * size, { bold: true })];
  y -= 1.4 * leading;
  lines.push(words(statement, [left, y], 1.2 * size, { bold: true }));
  y -= 1.2 * leading;
  for (const note of notes) {
    for (const text of wrapText(note, right - left, size, measure)) {
      lines.push(words(text, [left, y], size));
      y -= leading;
    }
    y -= 0.25 * leading;
  }
  return lines;
}
