import type { Alcove } from '../alcove';
import type { Dual } from '../dual';
import type { Instruments, Reading, ReadingKind } from '../job-file';
import { angleSd, gapSd, lengthSd, straightedgeSd } from './instruments';
import { gapFromPlane, observe, type SingleReading } from './observe';
import { type TakenValue, takenValue } from './takenValue';

/** One number that was read, with its equation. */
export interface Observation {
  /** the reading's id; `r7/0` for the first gap of plumb reading r7 */
  id: string;
  /** index in the list of readings */
  reading: number;
  kind: ReadingKind;
  /** as read, mm (degrees for an angle); the mean where it was taken several times */
  observed: number;
  /** 1 sigma, same unit */
  sd: number;
  /** the reading's own unknown standoff, shared by the gaps of a plumb reading, adds to the prediction */
  standoff: boolean;
  predict(alcove: Alcove): Dual;
}

/** Readings as observations, in order, those marked off included. */
export function observationsOf(readings: readonly Reading[], instruments: Instruments): Observation[] {
  return readings.flatMap((reading, index) => observationsOfReading(reading, index, instruments));
}

function observationsOfReading(reading: Reading, index: number, instruments: Instruments): Observation[] {
  if (reading.kind === 'plumb') {
    return reading.gaps.map((gap, i) => ({
      id: `${reading.id}/${i}`,
      reading: index,
      kind: reading.kind,
      observed: gap.value,
      sd: gap.sd ?? reading.sd ?? gapSd(instruments),
      standoff: true,
      predict: (alcove) => gapFromPlane(reading.wall, { at: reading.at, height: gap.height }, alcove),
    }));
  }
  const taken = takenValue(reading);
  return [
    {
      id: reading.id,
      reading: index,
      kind: reading.kind,
      observed: taken.mean,
      sd: meanSd(reading, taken, instruments),
      standoff: false,
      predict: (alcove) => observe(reading, alcove),
    },
  ];
}

/** 1 sigma of the mean of all that was taken. */
function meanSd(reading: SingleReading, { mean, times }: TakenValue, instruments: Instruments): number {
  const averaged = (sd: number) => sd / Math.sqrt(times);
  if (reading.sd !== undefined) return averaged(reading.sd);
  if (reading.kind === 'angle') return averaged(angleSd(instruments));
  if (reading.kind === 'straightedge') return averaged(straightedgeSd(instruments));
  return lengthSd(mean, reading.instrument ?? 'tape', instruments, times);
}
