import type { Instruments } from '../job-file';

/** Reading error of a person with a tape, 1 sigma, mm (common practice, no source). */
const TAPE_READING_SD = 0.5;

/**
 * Standard deviation, mm, of a length taken with a class II tape: maximum error 0.3 + 0.2 L mm, L in whole metres
 * rounded up (Directive 2014/32/EU, Annex X, chapter I), taken as 2 sigma, and the reading error in quadrature. Taken
 * again, the reading error averages out; the tape's own does not.
 * @param length mm
 * @param times how often it was taken
 */
export function tapeSd(length: number, times = 1): number {
  const metres = Math.max(1, Math.ceil(Math.abs(length) / 1000));
  return Math.hypot((0.3 + 0.2 * metres) / 2, TAPE_READING_SD / Math.sqrt(times));
}

/**
 * Standard deviation of the mean of a length taken several times, mm. A laser's stays as it is: what its maker states is
 * its own error, which comes back each time.
 */
export function lengthSd(length: number, instrument: 'tape' | 'laser', instruments: Instruments, times = 1): number {
  if (instrument === 'laser') return instruments.laser?.sd ?? 1;
  return instruments.tape ? instruments.tape.sd / Math.sqrt(times) : tapeSd(length, times);
}

/** A gap from a plumb line, read with a rule, mm (common practice, no source). */
export const gapSd = (instruments: Instruments): number => instruments.rule?.sd ?? 0.5;

/** A gap under a straightedge, mm (common practice, no source). */
export const straightedgeSd = (instruments: Instruments): number => instruments.straightedge?.sd ?? 0.4;

/** An angle finder, degrees (common practice, no source). */
export const angleSd = (instruments: Instruments): number => instruments.angleFinder?.sd ?? 0.1;
