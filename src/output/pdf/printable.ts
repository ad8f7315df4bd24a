/** Stands in for a character that the font cannot draw. */
const SUBSTITUTE = '\uFFFD';

/** Scripts and signs whose characters stand side by side, so that any sequence of them can be set. */
const UNSHAPED = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{N}\p{P}\p{S}\p{Zs}]/u;
const ONLY_UNSHAPED = new RegExp(`^${UNSHAPED.source}*$`, 'u');

/** What a person typed, with line breaks as blanks and every character that the font lacks visibly replaced. */
export function printable(text: string, glyphs: ReadonlySet<number>): string {
  let safe = '';
  for (const character of text) {
    const code = character.codePointAt(0)!;
    if (/[\p{Cc}\u2028\u2029]/u.test(character)) safe += ' ';
    else if (code >= 0xd800 && code <= 0xdfff) safe += SUBSTITUTE;
    else safe += glyphs.has(code) ? character : SUBSTITUTE;
  }
  return safe;
}

export const needsNoShaping = (text: string): boolean => ONLY_UNSHAPED.test(text);

/** For fonts that fail on a script's shaping rules: only what needs none is kept. */
export function plainlyPrintable(text: string): string {
  return [...text].map((character) => (UNSHAPED.test(character) ? character : SUBSTITUTE)).join('');
}
