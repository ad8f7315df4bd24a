/** Width of a line of words in mm at a font size in mm. */
export type MeasureText = (text: string, size: number, bold: boolean) => number;

/** A generous width for a renderer whose font is not known beforehand. */
export const roughTextWidth: MeasureText = (text, size, bold) => {
  let ems = 0;
  for (const character of text) {
    if (/[\s.,:;'’|!il()/-]/.test(character)) ems += 0.38;
    else if (/[MWmw@%—]/.test(character)) ems += 0.95;
    else if ((character.codePointAt(0) ?? 0) > 0x2e7f) ems += 1;
    else ems += 0.62;
  }
  return ems * size * (bold ? 1.08 : 1);
};

/** Breaks words into lines no wider than `width` mm; a single word that is wider is broken inside. */
export function wrapText(text: string, width: number, size: number, measure: MeasureText, bold = false): string[] {
  const lines: string[] = [];
  let line = '';
  const fits = (candidate: string) => measure(candidate, size, bold) <= width;
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const candidate = line ? `${line} ${word}` : word;
    if (fits(candidate)) {
      line = candidate;
      continue;
    }
    if (line) lines.push(line);
    line = '';
    for (const character of word) {
      if (line && !fits(line + character)) {
        lines.push(line);
        line = '';
      }
      line += character;
    }
  }
  if (line || lines.length === 0) lines.push(line);
  return lines;
}
