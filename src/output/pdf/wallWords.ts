import { type Job, type Result, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';

/** Height over which a lean is told in inches, mm (8 ft). */
const EIGHT_FEET = 2438.4;

type Wall = Result['walls']['back'];

/** Lean of a wall with its ±: mm per m, or the offset over 8 ft. */
export function leanWords({ plumb, plumbSd }: Wall, job: Job): string {
  const direction = plumb >= 0 ? 'leans in going up' : 'leans out going up';
  return `${slopeWords(plumb, plumbSd, job, 'in 8 ft')}, ${direction}`;
}

export function slopeWords(perMetre: number, sd: number, job: Job, inches: string): string {
  if (job.display === 'mm') return `${Math.abs(perMetre).toFixed(1)} ±${(Z_95 * sd).toFixed(1)} mm/m`;
  const { coarse, plusMinus } = lengthsOf(job);
  return `${coarse((Math.abs(perMetre) * EIGHT_FEET) / 1000).text} ${plusMinus((sd * EIGHT_FEET) / 1000).text} ${inches}`;
}

export function hollowWords(bow: number, sd: number, job: Job): string {
  const { fine, plusMinus } = lengthsOf(job);
  return fine(Math.abs(bow)).text === fine(0).text
    ? `straight ${plusMinus(sd).text}`
    : `${fine(Math.abs(bow)).text} ${plusMinus(sd).text} ${bow >= 0 ? 'hollow' : 'hump'}`;
}

export function twistWords(twist: number, sd: number, job: Job): string {
  const { fine, plusMinus } = lengthsOf(job);
  return `${fine(Math.abs(twist)).text} ${plusMinus(sd).text}`;
}

export const angleWords = (value: number, sd: number): string =>
  `${value.toFixed(1)}° ±${(Math.ceil(Z_95 * sd * 10 - 1e-9) / 10).toFixed(1)}°`;
