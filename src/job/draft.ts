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

/** The same texts, each under the path that its field has from now on. */
const typedUnder = (typed: Draft['typed'], pathOf: (path: FieldPath) => FieldPath): Draft['typed'] =>
  Object.fromEntries(Object.entries(typed).map(([key, text]) => [fieldKey(pathOf(pathOfKey(key))), text]));

/** Texts of the list items after `index` move up by one, those of the item itself go. */
export const typedAfterRemoval = (typed: Draft['typed'], list: FieldPath, index: number): Draft['typed'] =>
  typedUnder(typedWithout(typed, [...list, index]), (path) => {
    const at = path[list.length];
    if (!startsWith(path, list) || typeof at !== 'number' || at < index) return path;
    return [...list, at - 1, ...path.slice(list.length + 1)];
  });

/** The texts of a part of the job that is found under another path from now on. */
export const typedMoved = (typed: Draft['typed'], from: FieldPath, to: FieldPath): Draft['typed'] =>
  typedUnder(typed, (path) => (startsWith(path, from) ? [...to, ...path.slice(from.length)] : path));
