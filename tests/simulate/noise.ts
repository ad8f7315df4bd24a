import type { Reading } from '../../src/core/job-file';
import { randomFrom } from './random';

/** Instrument's standard deviation (1 sigma) by design section 3: mm, degrees for an angle. */
export function instrumentSd(reading: Reading): number {
  switch (reading.kind) {
    case 'plumb':
      return 0.5;
    case 'straightedge':
      return 0.4;
    case 'angle':
      return 0.1;
    default: {
      if (reading.instrument === 'laser') return 1;
      const metres = Math.ceil(reading.value / 1000 || 1);
      const classTwo = (0.3 + 0.2 * metres) / 2;
      return Math.sqrt(classTwo ** 2 + 0.5 ** 2);
    }
  }
}

/** The same readings with each value passed through `change`; a plumb reading's gaps one by one. */
export function eachValue(
  readings: Reading[],
  change: (value: number, reading: Reading, gap: number) => number,
): Reading[] {
  return readings.map((reading) =>
    reading.kind === 'plumb'
      ? { ...reading, gaps: reading.gaps.map((gap, i) => ({ ...gap, value: change(gap.value, reading, i) })) }
      : { ...reading, value: change(reading.value, reading, 0) },
  );
}

/** Readings with normal errors of their own or their instrument's standard deviation. */
export function noisy(readings: Reading[], seed: number): Reading[] {
  const random = randomFrom(seed);
  return eachValue(readings, (value, reading) => random.normal(value, reading.sd ?? instrumentSd(reading)));
}

/**
 * Readings as a person would write them down: to 1/16 in or 1 mm on a tape, half of that on a rule, 0.1° on an angle
 * finder. Errors and rounding together have the instrument's standard deviation.
 */
export function writtenDown(readings: Reading[], display: 'in' | 'mm', seed: number): Reading[] {
  const random = randomFrom(seed);
  return eachValue(readings, (value, reading) => {
    const step = stepOf(reading, display);
    const sd = Math.sqrt(instrumentSd(reading) ** 2 - step ** 2 / 12);
    return roundTo(random.normal(value, sd), step);
  });
}

/** Readings with a stated standard deviation: mm, a tenth of the number in degrees for an angle. */
export const withSd = (readings: Reading[], sd: number): Reading[] =>
  readings.map((reading) => ({ ...reading, sd: reading.kind === 'angle' ? sd / 10 : sd }));

/** One value made wrong by `size`. Id of a reading, `id/k` for gap k of a plumb reading. */
export function withBlunder(readings: Reading[], id: string, size: number): Reading[] {
  let found = false;
  const blundered = eachValue(readings, (value, reading, gap) => {
    const here = id === (reading.kind === 'plumb' ? `${reading.id}/${gap}` : reading.id);
    found ||= here;
    return here ? value + size : value;
  });
  if (!found) throw new Error(`no reading ${id}`);
  return blundered;
}

function stepOf({ kind }: Reading, display: 'in' | 'mm'): number {
  if (kind === 'angle') return 0.1;
  const tape = display === 'in' ? 25.4 / 16 : 1;
  return kind === 'plumb' || kind === 'straightedge' ? tape / 2 : tape;
}

const roundTo = (value: number, step: number): number => Number((Math.round(value / step) * step).toFixed(5));
