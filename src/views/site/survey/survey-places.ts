import type { PlannedReading, Unread } from '../../../core';
import type { DraftJob, DraftReading } from '../../../job';
import { keyOfEmpty, keyOfItem, type SurveyPlace } from './place';
import { isAt } from './same-place';

/** One number of the survey: a place and which of its fields. */
export interface Step {
  place: string;
  field: number;
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
  const turns: { entry: Planned; turn: number }[] = [];
  for (const { reading: where } of plan) {
    const before = where.kind === 'plumb' ? undefined : planned.find((each) => sameWhere(each.where, where));
    const entry = before ?? { where, times: 0, reading: firstAt(free, where) };
    if (!before) planned.push(entry);
    if (entry.reading) free.delete(entry.reading);
    turns.push({ entry, turn: entry.times++ });
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
  const steps = [
    ...turns.flatMap(({ entry, turn }) => {
      const place = placeOf.get(entry)!;
      if (entry.where.kind !== 'plumb') return [{ place: place.key, field: turn }];
      return Array.from({ length: numbers(place) }, (_, field) => ({ place: place.key, field }));
    }),
    ...unplanned.flatMap((place) =>
      Array.from({ length: numbers(place) || 1 }, (_, field) => ({ place: place.key, field })),
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
export function nextStep(steps: readonly Step[], from: Step | null, isOpen: (step: Step) => boolean): Step | null {
  const at = from === null ? -1 : steps.findIndex(({ place, field }) => place === from.place && field === from.field);
  const turned = [...steps.slice(at + 1), ...steps.slice(0, Math.max(0, at))];
  return turned.find(isOpen) ?? null;
}
