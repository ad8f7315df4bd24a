/** Text made safe for XML content and attributes; characters that XML forbids become U+FFFD. */
export function escapeXml(text: string): string {
  return (
    text
      .replace(/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g, '\uFFFD')
      // biome-ignore lint/suspicious/noControlCharactersInRegex: these are the characters that XML 1.0 forbids
      .replace(/[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]/g, '\uFFFD')
      .replace(/&/g, '&amp;')
      .replace(/</g, '&lt;')
      .replace(/>/g, '&gt;')
      .replace(/"/g, '&quot;')
      .replace(/'/g, '&#39;')
  );
}
