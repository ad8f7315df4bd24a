import { temporal } from 'zundo';
import { createStore } from 'zustand/vanilla';
import type { Fixture, ReadingKind, Unread } from '../core';
import { type Draft, type DraftFixture, type DraftReading, typedAfterRemoval, typedMoved, typedWithout } from './draft';
import { type EntryKind, rangeFault, readEntry } from './entry';
import { withHistory } from './history';
import { newFixture, newReading, placedReading } from './new-item';
import { type FieldPath, fieldKey, pathOfKey, valueAt, withValueAt } from './path';

/** What undo and redo go by. */
export interface Steps {
  past: { draft?: Draft }[];
  future: { draft?: Draft }[];
}

export interface DraftState {
  draft: Draft;
  /** key of the field being typed in */
  typing: string | null;
  /** what the step of undo in progress belongs to; edits with the same name are undone together */
  step: string | null;
  /** nothing can be changed */
  locked: boolean;

  /** Takes the text of a field as it stands; one that is not understood is kept as text. */
  type(path: FieldPath, kind: EntryKind, text: string): void;
  /** The field was left: what follows is a new step of undo, and a text not understood no longer counts. */
  leave(): void;
  /** Sets a name or a note. */
  write(path: FieldPath, text: string): void;
  /** Sets a choice; `undefined` clears it. */
  choose(path: FieldPath, value: unknown): void;
  /** Sets several choices as one step. */
  chooseAll(choices: readonly (readonly [path: FieldPath, value: unknown])[]): void;
  /** Keeps a text as it stands beside the job, under a path at which the job has no field. */
  jot(path: FieldPath, text: string): void;
  /** Adds an item at the end of a list. */
  addTo(list: FieldPath, item: unknown): void;
  removeFrom(list: FieldPath, index: number): void;
  /** Adds an empty reading and gives its id. */
  addReading(kind: ReadingKind): string;
  /** Adds a reading at a place, its values still to be entered, and gives its id. */
  addPlaced(place: Unread): string;
  removeRepeat(readingId: string, index: number): void;
  addFixture(kind: Fixture['kind']): string;
  putOnWall(fixtureId: string, wall: Fixture['wall']): void;
  remove(list: 'readings' | 'fixtures' | 'studs' | 'scans' | 'choices', id: string): void;
  /** Gives an item a name that no other of its list has. */
  rename(list: 'choices', id: string, to: string): void;
  addGap(readingId: string): void;
  removeGap(readingId: string, index: number): void;
  /** Takes up another job, or this one as it was changed elsewhere, with the steps that undo goes back by. */
  take(draft: Draft, steps?: Steps): void;
  /** Lets nothing be changed until it is unlocked. */
  lock(locked: boolean): void;
  undo(): void;
  redo(): void;
}

/** Steps that undo keeps; the oldest go first. */
export const undoSteps = 500;

/** Everything the person edits, with undo and redo (`store.temporal`). */
export const createDraftStore = (first: Draft, now: () => Date = () => new Date()) => {
  let recorded: string | null = null;
  /** what the field being typed in held before */
  let before: unknown;
  const store = createStore<DraftState>()(
    temporal(
      (setAll, get) => {
        const set: typeof setAll = (change) => {
          const part = typeof change === 'function' ? change(get()) : change;
          if (!(get().locked && 'draft' in part)) setAll(part);
        };
        const edit = (step: string | null, change: (draft: Draft) => Partial<Draft>) =>
          set(({ draft }) => ({ draft: { ...draft, ...change(draft) }, step }));
        return {
          draft: first,
          typing: null,
          step: null,
          locked: false,

          type: (path, kind, text) => {
            const key = fieldKey(path);
            const { draft } = get();
            if (get().typing !== key) before = valueAt(draft.job, path);
            const entry = readEntry(kind, text, draft.job.display, draft.job.prices.currency);
            const fits = entry.ok && rangeFault(draft.job, path, entry.value) === null;
            set({
              typing: key,
              step: key,
              draft: fits
                ? { ...draft, job: withValueAt(draft.job, path, entry.value), typed: typedWithout(draft.typed, path) }
                : { ...draft, typed: { ...draft.typed, [key]: text } },
            });
          },
          leave: () => {
            const { draft, typing } = get();
            // Part of the step of undo that the typing was.
            if (typing !== null && draft.typed[typing] === undefined) {
              const job = withHistory(draft.job, pathOfKey(typing), before, now());
              if (job !== draft.job) set({ draft: { ...draft, job } });
            }
            recorded = null;
            set({ typing: null, step: null });
          },
          write: (path, text) => edit(fieldKey(path), ({ job }) => ({ job: withValueAt(job, path, text) })),
          choose: (path, value) =>
            edit(null, ({ job, typed }) => ({
              job: withValueAt(job, path, value),
              typed: typedWithout(typed, path),
            })),
          chooseAll: (choices) =>
            edit(null, (draft) =>
              choices.reduce(
                ({ job, typed }, [path, value]) => ({
                  job: withValueAt(job, path, value),
                  typed: typedWithout(typed, path),
                }),
                { job: draft.job, typed: draft.typed },
              ),
            ),
          jot: (path, text) =>
            edit(fieldKey(path), ({ typed }) => ({
              typed: text === '' ? typedWithout(typed, path) : { ...typed, [fieldKey(path)]: text },
            })),
          addTo: (list, item) =>
            edit(null, ({ job }) => ({
              job: withValueAt(job, list, [...((valueAt(job, list) as unknown[] | undefined) ?? []), item]),
            })),
          removeFrom: (list, index) =>
            edit(null, ({ job, typed }) => ({
              job: withValueAt(
                job,
                list,
                (valueAt(job, list) as unknown[]).filter((_, i) => i !== index),
              ),
              typed: typedAfterRemoval(typed, list, index),
            })),
          addReading: (kind) => {
            const reading = newReading(kind, get().draft.job);
            edit(null, ({ job }) => ({ job: { ...job, readings: [...job.readings, reading] } }));
            return reading.id;
          },
          addPlaced: (place) => {
            const reading = placedReading(place, get().draft.job);
            edit(null, ({ job }) => ({ job: { ...job, readings: [...job.readings, reading] } }));
            return reading.id;
          },
          addFixture: (kind) => {
            const fixture = newFixture(kind, get().draft.job);
            edit(null, ({ job }) => ({ job: { ...job, fixtures: [...job.fixtures, fixture] } }));
            return fixture.id;
          },
          putOnWall: (fixtureId, wall) =>
            edit(null, ({ job, typed }) => ({
              job: {
                ...job,
                fixtures: job.fixtures.map((fixture) => (fixture.id === fixtureId ? onWall(fixture, wall) : fixture)),
              },
              typed: typedWithout(typedWithout(typed, ['fixtures', fixtureId, 'fromBack']), [
                'fixtures',
                fixtureId,
                'fromPlumbLine',
              ]),
            })),
          remove: (list, id) =>
            edit(null, ({ job, typed }) => ({
              job: { ...job, [list]: job[list].filter((item) => item.id !== id) },
              typed: typedWithout(typed, [list, id]),
            })),
          rename: (list, id, to) =>
            edit(null, ({ job, typed }) => ({
              job: withValueAt(job, [list, id, 'id'], to),
              typed: typedMoved(typed, [list, id], [list, to]),
            })),
          addGap: (readingId) => edit(null, ({ job }) => ({ job: withGaps(job, readingId, (gaps) => [...gaps, {}]) })),
          removeGap: (readingId, index) =>
            edit(null, ({ job, typed }) => ({
              job: withGaps(job, readingId, (gaps) => gaps.filter((_, i) => i !== index)),
              typed: typedAfterRemoval(typed, ['readings', readingId, 'gaps'], index),
            })),
          removeRepeat: (readingId, index) =>
            edit(null, ({ job, typed }) => ({
              job: withRepeats(job, readingId, (repeats) => repeats.filter((_, i) => i !== index)),
              typed: typedAfterRemoval(typed, ['readings', readingId, 'repeats'], index),
            })),
          take: (draft, steps = { past: [], future: [] }) => {
            const { temporal: recorder } = store;
            recorder.getState().pause();
            setAll({ draft, typing: null, step: null });
            recorder.getState().resume();
            recorder.setState({ pastStates: steps.past, futureStates: steps.future });
            recorded = null;
          },
          lock: (locked) => setAll({ locked }),
          undo: () => {
            get().leave();
            if (!get().locked) store.temporal.getState().undo();
          },
          redo: () => {
            get().leave();
            if (!get().locked) store.temporal.getState().redo();
          },
        };
      },
      {
        limit: undoSteps,
        partialize: ({ draft }) => ({ draft }),
        equality: (past, current) => past.draft === current.draft,
        handleSet: (record) => (past, replace) => {
          const { step } = store.getState();
          if (step !== null && step === recorded) return;
          recorded = step;
          (record as (past: unknown, replace: unknown) => void)(past, replace);
        },
      },
    ),
  );
  return store;
};

export type DraftStore = ReturnType<typeof createDraftStore>;

type Gaps = Extract<DraftReading, { kind: 'plumb' }>['gaps'];

const withGaps = (job: Draft['job'], readingId: string, change: (gaps: NonNullable<Gaps>) => Gaps): Draft['job'] => ({
  ...job,
  readings: job.readings.map((reading) =>
    reading.id === readingId && reading.kind === 'plumb' ? { ...reading, gaps: change(reading.gaps ?? []) } : reading,
  ),
});

const withRepeats = (job: Draft['job'], readingId: string, change: (repeats: number[]) => number[]): Draft['job'] => ({
  ...job,
  readings: job.readings.map((reading) => {
    if (reading.id !== readingId || reading.kind === 'plumb') return reading;
    const { repeats = [], ...rest } = reading;
    const left = change(repeats);
    return left.length > 0 ? { ...rest, repeats: left } : rest;
  }),
});

function onWall(fixture: DraftFixture, wall: Fixture['wall']): DraftFixture {
  const { id, kind, aboveRim, hole, takenAt } = fixture;
  const common = {
    id,
    kind,
    ...(takenAt !== undefined && { takenAt }),
    ...(aboveRim !== undefined && { aboveRim }),
    ...(hole !== undefined && { hole }),
  };
  if (wall === 'back') return { ...common, wall };
  return fixture.wall === 'back' ? { ...common, wall, fromBackOf: 'panel' } : { ...fixture, wall };
}
