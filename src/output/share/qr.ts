import { encode } from 'uqr';

/** Above this the squares on paper are too small for a phone's camera (common practice, no source): 161 modules a side. */
const MOST_VERSION = 36;
const BORDER = 4;

export type QrCode =
  /** dark modules by row, the quiet border of four included */
  { ok: true; size: number; dark: readonly (readonly boolean[])[] } | { ok: false; message: string };

/** A QR code (ISO/IEC 18004, error correction L) of an address; a sentence where it would be too fine to read. */
export function qrCode(address: string): QrCode {
  const tooLong: QrCode = {
    ok: false,
    message:
      'The link is too long for a QR code that a phone reads from paper. Share it without prices, or send the link itself.',
  };
  try {
    const { size, data } = encode(address, { ecc: 'L', border: BORDER, maxVersion: MOST_VERSION });
    return { ok: true, size, dark: data };
  } catch {
    return tooLong;
  }
}

/** The code as SVG, one path, sized in modules. */
export function qrSvg({ size, dark }: Extract<QrCode, { ok: true }>): string {
  const runs = dark.flatMap((row, y) =>
    [
      ...row
        .map((on) => (on ? '1' : '0'))
        .join('')
        .matchAll(/1+/g),
    ].map(({ index, 0: run }) => `M${index} ${y}h${run.length}v1h-${run.length}z`),
  );
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"><path fill="#fff" d="M0 0h${size}v${size}H0z"/><path d="${runs.join('')}"/></svg>`;
}
