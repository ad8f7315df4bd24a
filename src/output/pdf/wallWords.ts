import { type Job, type Result, Z_95 } from '../../core';
import { lengthsOf } from '../drawing';
import { slopeWords } from '../words';

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
