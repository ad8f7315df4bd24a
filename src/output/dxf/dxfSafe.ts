/**
 * Words made safe for a DXF TEXT entity: one line, no control characters, and none of the sequences that a reader
 * would interpret (`%%`, `^`, `\U+`, `\M+`).
 */
export function dxfSafe(text: string): string {
  return text
    .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD')
    .replace(/[\p{Cc}\u2028\u2029]+/gu, ' ')
    .replace(/%(?=%)/g, '% ')
    .replace(/\^/g, '^ ')
    .replace(/\\(?=[UM]\+)/gi, '\\ ');
}
