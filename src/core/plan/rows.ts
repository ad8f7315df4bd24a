import type { Alcove } from '../alcove';
import type { Instruments, Reading } from '../job-file';
import { observationsOf } from '../survey';

/**
 * Derivatives over sigma of what a reading would say, at the value that it would have. The gaps of a plumb reading less
 * their mean, which eliminates the standoff.
 */
export function rowsOf(reading: Reading, alcove: Alcove, instruments: Instruments): Float64Array[] {
  const observations = observationsOf([reading], instruments);
  const predictions = observations.map(({ predict }) => predict(alcove));
  const valued = reading.kind === 'plumb' ? reading : { ...reading, value: predictions[0]!.value };
  const { sd } = observationsOf([valued], instruments)[0]!;
  const rows = predictions.map(({ gradient }) => gradient!.map((partial) => partial / sd));
  if (reading.kind !== 'plumb') return rows;
  const mean = rows[0]!.map((_, j) => rows.reduce((sum, row) => sum + row[j]!, 0) / rows.length);
  return rows.map((row) => row.map((entry, j) => entry - mean[j]!));
}
