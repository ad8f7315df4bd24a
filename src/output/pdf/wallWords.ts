import { type Job, type Result, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';

/** Height over which a lean is told in inches, mm (8 ft). */
const EIGHT_FEET = 2438.4;

type Wall = Result['walls']['back'];

/** Lean of a wall with its ±: mm per m, or the offset over 8 ft. */
export function leanWords({ plumb, plumbSd }: Wall, job: Job): string {
  const slope = slopeWords(plumb, plumbSd, job);
  return slope.none ? `plumb ${slope.plusMinus}` : `${slope.words}, leans ${plumb > 0 ? 'in' : 'out'} going up`;
}

/** How far the rim is out of level, both ways. */
export function rimWords({ outOfLevel: { along, alongSd, across, acrossSd } }: Result['rim'], job: Job): string {
  const [sideways, outward] = [slopeWords(along, alongSd, job), slopeWords(across, acrossSd, job)];
  const one = sideways.none
    ? `level along the back wall ${sideways.plusMinus}`
    : `${sideways.words} higher at the ${along > 0 ? 'right' : 'left'} along the back wall`;
  const other = outward.none
    ? `level towards the front ${outward.plusMinus}`
    : `${outward.words} higher at the ${across > 0 ? 'front' : 'back'}`;
  return `Rim: ${one}; ${other}.`;
}

interface Slope {
  /** too small to be told */
  none: boolean;
  words: string;
  plusMinus: string;
}

function slopeWords(perMetre: number, sd: number, job: Job): Slope {
  if (job.display === 'mm') {
    const [slope, half] = [Math.abs(perMetre).toFixed(1), `±${(Z_95 * sd).toFixed(1)} mm/m`];
    return { none: slope === '0.0', words: `${slope} ${half}`, plusMinus: half };
  }
  const { coarse, plusMinus } = lengthsOf(job);
  const slope = coarse((Math.abs(perMetre) * EIGHT_FEET) / 1000).text;
  const half = plusMinus((sd * EIGHT_FEET) / 1000).text;
  return { none: slope === coarse(0).text, words: `${slope} ${half} in 8 ft`, plusMinus: `${half} in 8 ft` };
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
