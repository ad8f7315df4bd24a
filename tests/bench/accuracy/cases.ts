import type { Job, Reading, Unread } from '../../../src/core';
import { type Random, randomFrom, type TrueAlcove } from '../../simulate';
import { type EdgePlace, edgePlaces } from './edges';
import { type Misread, misreadOne } from './misread';
import { type Reach, reachOf } from './places';
import { taken } from './take';

/** One simulated alcove with a survey of it. */
export interface Case {
  job: Job;
  places: EdgePlace[];
  misread: Misread;
  /** the survey with two readings misread */
  misreadTwice: { readings: Reading[]; ids: string[] };
  /** the same reading taken once more, without a slip */
  again(reading: Reading, round?: number): Reading;
}

/** Takes a survey of an alcove; the same seed gives the same errors and slips. */
export function caseOf(alcove: TrueAlcove, nominal: Job, places: (reach: Reach) => Unread[], seed: number): Case {
  const wanted = places(reachOf(alcove, nominal));
  const readings = taken(alcove, wanted, seed + 10_000);
  const order = new Map(readings.map(({ id }, i) => [id, i]));
  const random = randomFrom(seed + 20_000);
  const misread = misreadOne(readings, random);
  return {
    job: { ...nominal, readings },
    places: edgePlaces(alcove, nominal),
    misread,
    misreadTwice: andAnother(misread, random),
    again(reading, round = 1) {
      const i = order.get(reading.id)!;
      return { ...taken(alcove, [wanted[i]!], 1000 * seed + 10 * i + round + 5_000_000)[0]!, id: reading.id };
    },
  };
}

function andAnother({ readings, id }: Misread, random: Random): Case['misreadTwice'] {
  for (;;) {
    const second = misreadOne(readings, random);
    if (second.id !== id) return { readings: second.readings, ids: [id, second.id] };
  }
}

/** Numbers that a person writes down. */
export const numbersIn = (readings: readonly Reading[]): number =>
  readings.reduce((sum, reading) => sum + (reading.kind === 'plumb' ? reading.gaps.length : 1), 0);
