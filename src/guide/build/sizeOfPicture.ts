/**
 * Width and height, px, of a WebP picture (RFC 9649) or of an SVG drawing with a viewBox.
 * @throws where it is neither
 */
export function sizeOfPicture(path: string, bytes: Buffer): { width: number; height: number } {
  if (path.endsWith('.svg')) {
    const box = /viewBox="0 0 (\d+) (\d+)"/.exec(bytes.toString('utf8'));
    if (box) return { width: Number(box[1]), height: Number(box[2]) };
  }
  const chunk = bytes.toString('latin1', 12, 16);
  if (chunk === 'VP8 ') return { width: bytes.readUInt16LE(26) & 0x3fff, height: bytes.readUInt16LE(28) & 0x3fff };
  if (chunk === 'VP8X') return { width: bytes.readUIntLE(24, 3) + 1, height: bytes.readUIntLE(27, 3) + 1 };
  if (chunk === 'VP8L') {
    const bits = bytes.readUInt32LE(21);
    return { width: (bits & 0x3fff) + 1, height: ((bits >> 14) & 0x3fff) + 1 };
  }
  throw new Error(`${path} is neither a WebP picture nor an SVG drawing with a viewBox`);
}
