/** Whether nothing that shows stands in `bytes` from `from` up to `to`. */
export function isEmptyLine(bytes: Uint8Array, from: number, to: number): boolean {
  for (let i = from; i < to; i++) if (bytes[i]! > 32) return false;
  return true;
}

/** The start of a line, for a sentence about it; what does not print stands as a question mark. */
export const startOfLine = (bytes: Uint8Array, from: number, to: number): string =>
  String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 40))).replace(/[^\x20-\x7e]/g, '?');
