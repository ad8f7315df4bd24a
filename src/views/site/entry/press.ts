import { type DisplayUnit, MM_PER_INCH, parseLength } from '../../../core';
import type { Pad } from '../survey';

export type Key =
  | { digit: string }
  /** so many sixteenths of an inch */
  | { sixteenths: number }
  /** one thirty-second more or less */
  | 'half-step'
  | 'point'
  | 'sign'
  | 'back'
  | 'clear';

/** A number in inches as keys make it. */
interface Inches {
  minus: string;
  whole: string;
  thirtySeconds: number;
}

const MOST_DIGITS = 6;

/** What a key of the pad makes of the text. Keys that make no sense there leave it as it is. */
export function press(pad: Pad, key: Key, unit: DisplayUnit): Pad {
  const text = pressed(pad, key, unit);
  return text === null ? pad : { text, fresh: false };
}

function pressed({ text, fresh }: Pad, key: Key, unit: DisplayUnit): string | null {
  if (key === 'clear') return '';
  if (key === 'sign') return /^\s*[-−–]/.test(text) ? text.replace(/^\s*[-−–]\s*/, '') : `-${text}`;
  if (key === 'point') return pointed(fresh ? signOf(text) : text);
  if (key === 'back') return shortened(text, unit);
  if (key === 'half-step' || 'sixteenths' in key) return unit === 'in' ? withFraction(text, key) : null;
  if (fresh) return `${signOf(text)}${key.digit}`;
  const inches = unit === 'in' ? inchesOf(text) : null;
  if (!inches) return text.length < 40 ? `${text}${key.digit}` : null;
  if (inches.whole.length >= MOST_DIGITS) return null;
  return written({ ...inches, whole: `${inches.whole === '0' ? '' : inches.whole}${key.digit}` });
}

const signOf = (text: string): string => (/^\s*[-−–]/.test(text) ? '-' : '');

function pointed(text: string): string | null {
  if (/[./]/.test(text)) return null;
  return /\d$/.test(text) ? `${text}.` : `${text}0.`;
}

/** Without its fraction, or without its last character. */
function shortened(text: string, unit: DisplayUnit): string {
  const inches = unit === 'in' ? inchesOf(text) : null;
  if (inches && inches.thirtySeconds > 0) return written({ ...inches, thirtySeconds: 0 });
  return text.slice(0, -1);
}

function withFraction(text: string, key: 'half-step' | { sixteenths: number }): string | null {
  const inches = inchesOf(text) ?? wholeInchesOf(text);
  if (!inches) return null;
  const odd = inches.thirtySeconds % 2;
  const thirtySeconds = key === 'half-step' ? inches.thirtySeconds + (odd ? -1 : 1) : 2 * key.sixteenths + odd;
  return written({ ...inches, thirtySeconds });
}

/** `-59 13/16` taken apart; null for a text that keys did not make. */
function inchesOf(text: string): Inches | null {
  const match = /^\s*([-−–]?)\s*(\d*)(?:(?:^|\s+|(?<=[-−–]))(\d+)\/(\d+))?\s*$/.exec(text) ?? loneFraction(text);
  if (!match) return null;
  const [, minus = '', whole = '', above = '0', below = '32'] = match;
  const thirtySeconds = (32 / Number(below)) * Number(above);
  if (!Number.isInteger(thirtySeconds) || thirtySeconds >= 32) return null;
  return { minus: minus && '-', whole, thirtySeconds };
}

const loneFraction = (text: string): RegExpExecArray | null => /^\s*([-−–]?)\s*()(\d+)\/(\d+)\s*$/.exec(text);

/** The whole inches of a length written in any other way. */
function wholeInchesOf(text: string): Inches | null {
  const length = parseLength(text, 'in');
  if (!length.ok) return null;
  const whole = Math.floor(Math.abs(length.mm) / MM_PER_INCH + 1e-9);
  return { minus: length.mm < 0 ? '-' : '', whole: String(whole), thirtySeconds: 0 };
}

function written({ minus, whole, thirtySeconds }: Inches): string {
  if (thirtySeconds === 0) return `${minus}${whole}`;
  let [above, below] = [thirtySeconds, 32];
  while (above % 2 === 0) [above, below] = [above / 2, below / 2];
  const figures = `${above}/${below}`;
  return whole === '' || whole === '0' ? `${minus}${figures}` : `${minus}${whole} ${figures}`;
}

/** Which sixteenths key is down, and whether the thirty-second is. */
export function fractionOf(text: string): { sixteenths: number; half: boolean } | null {
  const inches = inchesOf(text);
  if (!inches || (inches.whole === '' && inches.thirtySeconds === 0)) return null;
  return { sixteenths: Math.floor(inches.thirtySeconds / 2), half: inches.thirtySeconds % 2 === 1 };
}
