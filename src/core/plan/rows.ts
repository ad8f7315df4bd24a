import type { Alcove } from '../alcove';
import type { Instruments, Reading } from '../job-file';
import { observationsOf } from '../survey';

/**
 * Derivatives over sigma of what a reading would say, at the value that it would have. The gaps of a plumb reading less
 * their weighted mean, which eliminates the standoff.
 */
export function rowsOf(reading: Reading, alcove: Alcove, instruments: Instruments): Float64Array[] {
  const predictions = observationsOf([reading], instruments).map(({ predict }) => predict(alcove));
  const valued = reading.kind === 'plumb' ? reading : { ...reading, value: predictions[0]!.value };
  const sds = observationsOf([valued], instruments).map(({ sd }) => sd);
  const rows = predictions.map(({ gradient }, i) => gradient!.map((partial) => partial / sds[i]!));
  if (reading.kind !== 'plumb') return rows;
  const weight = sds.reduce((sum, sd) => sum + 1 / sd ** 2, 0);
  const mean = rows[0]!.map((_, j) => rows.reduce((sum, row, i) => sum + row[j]! / sds[i]!, 0) / weight);
  return rows.map((row, i) => row.map((entry, j) => entry - mean[j]! / sds[i]!));
}
