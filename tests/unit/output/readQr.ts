import jsQR from 'jsqr';

/** What an independent reader (jsQR) finds in a picture of dark places; null where it finds no code. */
export function readQr(width: number, height: number, isDark: (x: number, y: number) => boolean): string | null {
  const pixels = new Uint8ClampedArray(4 * width * height).fill(255);
  for (let y = 0; y < height; y++) {
    for (let x = 0; x < width; x++) if (isDark(x, y)) pixels.fill(0, 4 * (y * width + x), 4 * (y * width + x) + 3);
  }
  return jsQR(pixels, width, height)?.data ?? null;
}
