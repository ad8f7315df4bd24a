/** Stands in for a character that the font cannot draw. */
const SUBSTITUTE = '\uFFFD';

/** Scripts that need no shaping, so that any sequence of their characters can be set. */
const PLAIN = /[\p{Script=Latin}\p{Script=Greek}\p{Script=Cyrillic}\p{N}\p{P}\p{S}\p{Zs}]/u;

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

/** `printable` for fonts that fail on a script's shaping rules: only scripts without any are kept. */
export function plainlyPrintable(text: string, glyphs: ReadonlySet<number>): string {
  return [...printable(text, glyphs)].map((character) => (PLAIN.test(character) ? character : SUBSTITUTE)).join('');
}
