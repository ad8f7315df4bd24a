const ALPHABET = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';

/** RFC 4648 section 5, without padding. */
export function toBase64url(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const [a, b, c] = [bytes[i]!, bytes[i + 1] ?? 0, bytes[i + 2] ?? 0];
    const four = [a >> 2, ((a & 3) << 4) | (b >> 4), ((b & 15) << 2) | (c >> 6), c & 63];
    text += four
      .slice(0, Math.min(4, bytes.length - i + 1))
      .map((six) => ALPHABET[six])
      .join('');
  }
  return text;
}

/** Null for a text that no bytes are written as: other characters, a length that cannot be, bits left over. */
export function fromBase64url(text: string): Uint8Array | null {
  if (!/^[\w-]*$/.test(text) || text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let [held, bits, at] = [0, 0, 0];
  for (const character of text) {
    held = ((held << 6) | ALPHABET.indexOf(character)) & 0xffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at++] = (held >> bits) & 0xff;
    }
  }
  return (held & ((1 << bits) - 1)) === 0 ? bytes : null;
}
