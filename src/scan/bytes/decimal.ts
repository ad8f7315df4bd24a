const NINE = 57;
const ZERO = 48;
const PLUS = 43;
const MINUS = 45;
const POINT = 46;
/** `e` and `E` differ in this bit */
const LOWER = 32;
const E = 101;

const powersOfTen = Array.from({ length: 23 }, (_, i) => 10 ** i);

/**
 * The number that stands in ASCII in `bytes` from `from` up to `to`, correctly rounded; NaN where none does. A mantissa
 * under 2^53 and a power of ten up to 22 are both exact, so that one division or product of them rounds once
 * (Clinger, "How to read floating point numbers accurately", 1990); all else is left to `Number`.
 * @param point code of the decimal mark
 */
export function decimalAt(bytes: Uint8Array, from: number, to: number, point = POINT): number {
  let i = from;
  const sign = bytes[i]!;
  if (sign === MINUS || sign === PLUS) i++;
  let mantissa = 0;
  let digits = 0;
  let scale = 0;
  let seen = false;
  for (; i < to; i++) {
    const digit = bytes[i]! - ZERO;
    if (digit < 0 || digit > 9) break;
    mantissa = mantissa * 10 + digit;
    if (mantissa > 0) digits++;
    seen = true;
  }
  if (i < to && bytes[i] === point) {
    for (i++; i < to; i++) {
      const digit = bytes[i]! - ZERO;
      if (digit < 0 || digit > 9) break;
      mantissa = mantissa * 10 + digit;
      if (mantissa > 0) digits++;
      scale--;
      seen = true;
    }
  }
  if (!seen) return Number.NaN;
  if (i < to) {
    if ((bytes[i]! | LOWER) !== E) return Number.NaN;
    const exponent = exponentAt(bytes, i + 1, to);
    if (Number.isNaN(exponent)) return Number.NaN;
    scale += exponent;
  }
  if (digits > 15 || scale > 22 || scale < -22) return slowly(bytes, from, to, point);
  const size = scale < 0 ? mantissa / powersOfTen[-scale]! : mantissa * powersOfTen[scale]!;
  return sign === MINUS ? -size : size;
}

function exponentAt(bytes: Uint8Array, from: number, to: number): number {
  let i = from;
  const sign = bytes[i];
  if (sign === MINUS || sign === PLUS) i++;
  if (i >= to) return Number.NaN;
  let exponent = 0;
  for (; i < to; i++) {
    const code = bytes[i]!;
    if (code < ZERO || code > NINE) return Number.NaN;
    exponent = Math.min(9999, exponent * 10 + code - ZERO);
  }
  return sign === MINUS ? -exponent : exponent;
}

function slowly(bytes: Uint8Array, from: number, to: number, point: number): number {
  const text = String.fromCharCode(...bytes.subarray(from, Math.min(to, from + 400)));
  return Number(point === POINT ? text : text.replace(String.fromCharCode(point), '.'));
}
