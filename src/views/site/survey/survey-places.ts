import type { PlannedReading, Unread } from '../../../core';
import type { DraftJob, DraftReading } from '../../../job';
import { inReadingOrder } from './fields';
import { keyOfEmpty, keyOfItem, type SurveyPlace } from './place';
import { isAt } from './same-place';

/** Where a number is entered: a place and which of its fields. */
interface NumberAt {
  place: string;
  field: number;
}

/** One number of the survey. */
export interface Step extends NumberAt {
  /** round of the plan that asks for it: 1 is enough for a first template; null where the plan does not ask */
  round: 1 | 2 | null;
}

export interface Survey {
  /** in the order of the plan, what is not on it after that */
  places: SurveyPlace[];
  /** every number in the order in which it is entered */
  steps: Step[];
}

interface Planned {
  where: Unread;
  times: number;
  reading: DraftReading | null;
}

/**
 * What has been and what is still to be read. A reading taken where the plan has one fills its place; a place planned
 * twice is read twice, but a plumb line hung twice hangs differently and is two readings.
 */
export function surveyOf(job: DraftJob, plan: readonly PlannedReading[]): Survey {
  const free = new Set(job.readings.filter(({ off }) => !off));
  const planned: Planned[] = [];
  const turns: { entry: Planned; turn: number; round: 1 | 2 }[] = [];
  for (const { reading: where, round } of plan) {
    const before = where.kind === 'plumb' ? undefined : planned.find((each) => sameWhere(each.where, where));
    const entry = before ?? { where, times: 0, reading: firstAt(free, where) };
    if (!before) planned.push(entry);
    if (entry.reading) free.delete(entry.reading);
    turns.push({ entry, turn: entry.times++, round });
  }
  const turnsOf = (where: Unread, upTo: Planned): number =>
    planned.slice(0, planned.indexOf(upTo)).filter((each) => sameWhere(each.where, where)).length;
  const placeOf = new Map<Planned, SurveyPlace>(
    planned.map((entry) => [
      entry,
      entry.reading
        ? itemPlace(entry.reading, entry.times)
        : {
            key: keyOfEmpty(entry.where, turnsOf(entry.where, entry)),
            list: 'readings',
            id: null,
            where: entry.where,
            times: entry.times,
          },
    ]),
  );
  const others = job.readings.filter((reading) => !planned.some((entry) => entry.reading === reading));
  const unplanned: SurveyPlace[] = [
    ...others.map((reading) => itemPlace(reading, 1)),
    ...job.fixtures.map(
      (where): SurveyPlace => ({
        key: keyOfItem('fixtures', where.id),
        list: 'fixtures',
        id: where.id,
        where,
        times: 1,
      }),
    ),
  ];
  const numbers = (place: SurveyPlace): number =>
    place.list === 'fixtures' ? 3 : place.where.kind === 'plumb' ? (place.where.gaps?.length ?? 0) : 0;
  const steps: Step[] = [
    ...turns.flatMap(({ entry, turn, round }): Step[] => {
      const place = placeOf.get(entry)!;
      if (entry.where.kind !== 'plumb') return [{ place: place.key, field: turn, round }];
      return inReadingOrder(place, numbers(place)).map((field) => ({ place: place.key, field, round }));
    }),
    ...unplanned.flatMap((place) =>
      inReadingOrder(place, numbers(place) || 1).map((field): Step => ({ place: place.key, field, round: null })),
    ),
  ];
  return { places: [...placeOf.values(), ...unplanned], steps };
}

const itemPlace = (where: DraftReading, times: number): SurveyPlace => ({
  key: keyOfItem('readings', where.id),
  list: 'readings',
  id: where.id,
  where,
  times,
});

const sameWhere = (a: Unread, b: Unread): boolean => JSON.stringify(a) === JSON.stringify(b);

function firstAt(free: ReadonlySet<DraftReading>, where: Unread): DraftReading | null {
  for (const reading of free) if (isAt(reading, where)) return reading;
  return null;
}

/** The first step after `from` that is still to be entered, from the start again after the last; null where none is. */
export function nextStep(steps: readonly Step[], from: NumberAt | null, isOpen: (step: Step) => boolean): Step | null {
  const at = from === null ? -1 : steps.findIndex(({ place, field }) => place === from.place && field === from.field);
  const turned = [...steps.slice(at + 1), ...steps.slice(0, Math.max(0, at))];
  return turned.find(isOpen) ?? null;
}
