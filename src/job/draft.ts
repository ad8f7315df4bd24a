import type { Fixture, Job, ReadingKind, ReadingOf, Stud } from '../core';
import { type FieldPath, fieldKey, pathOfKey, startsWith } from './path';

type Unfinished<T> = T extends (infer Item)[]
  ? Unfinished<Item>[]
  : T extends object
    ? { [K in keyof T]?: Unfinished<T[K]> }
    : T;
type WithKeys<T, K extends keyof T> = T extends unknown ? Unfinished<Omit<T, K>> & Pick<T, K> : never;

/** A reading as far as it has been entered. */
export type DraftReading = { [K in ReadingKind]: WithKeys<ReadingOf<K>, 'id' | 'kind'> }[ReadingKind];
export type DraftReadingOf<K extends ReadingKind> = Extract<DraftReading, { kind: K }>;

/** A fixture as far as it has been entered. */
export type DraftFixture = {
  [W in Fixture['wall']]: WithKeys<Extract<Fixture, { wall: W }>, 'id' | 'kind' | 'wall'>;
}[Fixture['wall']];

/** A stud as far as it has been entered. */
export type DraftStud = WithKeys<Stud, 'id' | 'wall'>;

export type DraftJob = Omit<Job, 'readings' | 'fixtures' | 'studs'> & {
  readings: DraftReading[];
  fixtures: DraftFixture[];
  studs: DraftStud[];
};

/** The job as the person has it in hand: what is understood, and beside it every text that is not (yet). */
export interface Draft {
  /** names the record that keeps it between visits */
  id: string;
  job: DraftJob;
  /** text of a field that does not read as a value, by `fieldKey` */
  typed: Record<string, string>;
}

export const draftOf = (job: Job, id: string): Draft => ({ id, job: structuredClone(job) as DraftJob, typed: {} });

/** The texts outside a part of the job that goes away. */
export function typedWithout(typed: Draft['typed'], path: FieldPath): Draft['typed'] {
  return Object.fromEntries(Object.entries(typed).filter(([key]) => !startsWith(pathOfKey(key), path)));
}

/** Texts of the list items after `index` move up by one, those of the item itself go. */
export function typedAfterRemoval(typed: Draft['typed'], list: FieldPath, index: number): Draft['typed'] {
  const moved = Object.entries(typedWithout(typed, [...list, index])).map(([key, text]) => {
    const path = pathOfKey(key);
    const at = path[list.length];
    if (!startsWith(path, list) || typeof at !== 'number' || at < index) return [key, text];
    return [fieldKey([...list, at - 1, ...path.slice(list.length + 1)]), text];
  });
  return Object.fromEntries(moved) as Draft['typed'];
}

/** The texts of a part of the job that is found under another path from now on. */
export function typedMoved(typed: Draft['typed'], from: FieldPath, to: FieldPath): Draft['typed'] {
  const moved = Object.entries(typed).map(([key, text]) => {
    const path = pathOfKey(key);
    return [startsWith(path, from) ? fieldKey([...to, ...path.slice(from.length)]) : key, text];
  });
  return Object.fromEntries(moved) as Draft['typed'];
}
