import {
  type Draft,
  type DraftFixture,
  type DraftJob,
  type EntryKind,
  type FieldPath,
  fieldKey,
  valueAt,
} from '../../../job';
import type { SurveyPlace, Where } from './place';

/** One number of a place. */
export interface PlaceField {
  /** from the reading or fixture on */
  path: FieldPath;
  label: string;
  kind: EntryKind;
  /** words for more and for less than nothing, where both can be */
  sides: readonly [positive: string, negative: string] | null;
}

/** The numbers that are entered at a place, as the job holds them. */
export function fieldsOf({ list, where, times }: SurveyPlace): PlaceField[] {
  return list === 'fixtures' ? fixtureFields(where) : readingFields(where, times);
}

function readingFields(where: Where, times: number): PlaceField[] {
  if (where.kind === 'plumb') {
    return (where.gaps ?? []).map((_, i) => ({
      path: ['gaps', i, 'value'],
      label: `gap ${i + 1}`,
      kind: 'length',
      sides: null,
    }));
  }
  const kind = where.kind === 'angle' ? 'degrees' : 'length';
  const sides = where.kind === 'straightedge' ? (['hollow', 'hump'] as const) : null;
  const again = 'repeats' in where ? (where.repeats?.length ?? 0) : 0;
  return Array.from({ length: Math.max(times, 1 + again) }, (_, i) => ({
    path: i === 0 ? ['value'] : ['repeats', i - 1],
    label: i === 0 ? 'value' : `taken again, ${i + 1}`,
    kind,
    sides,
  }));
}

const fixtureFields = ({ wall }: DraftFixture): PlaceField[] => [
  { path: ['aboveRim'], label: 'centre above the rim', kind: 'length', sides: null },
  wall === 'back'
    ? { path: ['fromPlumbLine'], label: 'from the plumb line', kind: 'length', sides: ['right', 'left'] }
    : { path: ['fromBack'], label: 'from the back', kind: 'length', sides: null },
  { path: ['hole'], label: 'hole across', kind: 'length', sides: null },
];

/** The fields of a place by index, in the order in which they are entered: down a hung line from its top. */
export function inReadingOrder({ list, where }: SurveyPlace, fields: number): number[] {
  const order = Array.from({ length: fields }, (_, i) => i);
  if (list !== 'readings' || where.kind !== 'plumb') return order;
  const { gaps = [] } = where;
  return order.sort((a, b) => (gaps[b]?.height ?? 0) - (gaps[a]?.height ?? 0));
}

/** Where a field stands in the job; null before its reading is there. */
export const pathOf = ({ list, id }: SurveyPlace, field: PlaceField): FieldPath | null =>
  id === null ? null : [list, id, ...field.path];

/** What stands in a field, undefined before anything is entered. */
export const valueIn = (job: DraftJob, place: SurveyPlace, field: PlaceField): number | undefined => {
  const path = pathOf(place, field);
  return path === null ? undefined : (valueAt(job, path) as number | undefined);
};

/** The text in a field that does not read as a number yet, undefined where it reads: the number before does not count. */
export const unreadIn = (typed: Draft['typed'], place: SurveyPlace, field: PlaceField): string | undefined => {
  const path = pathOf(place, field);
  return path === null ? undefined : typed[fieldKey(path)];
};
