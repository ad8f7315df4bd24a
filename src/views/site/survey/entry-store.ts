import { createStore } from 'zustand/vanilla';
import { editableLength, type PlannedReading } from '../../../core';
import { fieldFault, type Session, valueAt } from '../../../job';
import { fieldsOf, inReadingOrder, type PlaceField, pathOf, unreadIn, valueIn } from './fields';
import { keyOfItem, type SurveyPlace } from './place';
import { nextStep, type Step, surveyOf } from './survey-places';

/** The text being entered. */
export interface Pad {
  text: string;
  /** nothing changed since the field was entered: the first digit starts a new number */
  fresh: boolean;
}

/** The number in hand. */
export interface Active extends Pad {
  /** another number each time that one is taken up */
  turn: number;
  place: SurveyPlace;
  field: number;
  /** why it was not taken */
  fault: string | null;
}

export interface EntryState {
  plan: readonly PlannedReading[];
  active: Active | null;
  /** every number of the plan is there */
  finished: boolean;
  setPlan(plan: readonly PlannedReading[]): void;
  /** Takes up a place at one of its numbers; without one, at the first that is not entered yet. */
  open(place: SurveyPlace, field?: number): void;
  /** Takes up the first number of the plan that is not entered yet. */
  openNext(): void;
  close(): void;
  /** Lets go of everything, for another job. */
  reset(): void;
  put(pad: Pad): void;
  /** Takes the number in hand and goes on to the next one of the plan; a text that is no number stays, with the reason. */
  submit(): void;
  /** Goes on without entering anything here. */
  skip(): void;
  /** Enters texts one after the other, each at the next place; stops at one that is no number. */
  enterAll(texts: readonly string[]): void;
}

/** What is being entered, number by number along the plan, on top of the draft. */
export function createEntryStore(draftStore: Session['draft']) {
  /** readings that were begun here and go again where nothing is entered */
  const begun = new Set<string>();
  let turns = 0;
  const draft = () => draftStore.getState().draft;

  const textOf = (place: SurveyPlace, field: PlaceField): string => {
    const unread = unreadIn(draft().typed, place, field);
    if (unread !== undefined) return unread;
    const value = valueIn(draft().job, place, field);
    if (value === undefined) return '';
    return field.kind === 'length' ? editableLength(value, draft().job.display) : String(value);
  };
  const isEntered = (place: SurveyPlace, index: number): boolean => {
    const field = fieldsOf(place)[index];
    if (!field || valueIn(draft().job, place, field) === undefined) return false;
    return unreadIn(draft().typed, place, field) === undefined;
  };

  return createStore<EntryState>()((set, get) => {
    const survey = () => surveyOf(draft().job, get().plan);
    const taken = (place: SurveyPlace, field: number): Active => {
      const { [field]: of } = fieldsOf(place);
      return { turn: ++turns, place, field, text: of ? textOf(place, of) : '', fresh: true, fault: null };
    };
    /** Ends the entry in hand: an empty reading begun here and an empty repeat go again. */
    const leave = () => {
      const { active } = get();
      const { leave, remove, removeRepeat } = draftStore.getState();
      leave();
      if (active?.place.list !== 'readings' || active.place.id === null || active.text.trim() !== '') return;
      const { id } = active.place;
      const reading = draft().job.readings.find((each) => each.id === id);
      if (!reading) return;
      const all = fieldsOf(active.place);
      const field = all[active.field];
      if (field?.path[0] === 'repeats') {
        removeRepeat(id, field.path[1] as number);
        return;
      }
      const others = all.filter((each) => each !== field);
      const nothing =
        others.every((each) => valueIn(draft().job, active.place, each) === undefined) &&
        !reading.note &&
        !reading.photos?.length;
      if (begun.has(id) && nothing) remove('readings', id);
    };
    const goOn = () => {
      const { active } = get();
      const from = active && { place: active.place.key, field: active.field };
      leave();
      const { places, steps } = survey();
      const placeOf = (step: Step) => places.find(({ key }) => key === step.place)!;
      const next = nextStep(steps, from, (step) => {
        const place = placeOf(step);
        const off = place.list === 'readings' && place.id !== null && place.where.off;
        return !off && !isEntered(place, step.field);
      });
      set(next ? { active: taken(placeOf(next), next.field), finished: false } : { active: null, finished: true });
    };
    return {
      plan: [],
      active: null,
      finished: false,
      setPlan: (plan) => set({ plan }),
      open: (place, field) => {
        leave();
        const order = inReadingOrder(place, fieldsOf(place).length);
        const first = order.find((i) => !isEntered(place, i)) ?? order[0] ?? 0;
        set({ active: taken(place, field ?? first), finished: false });
      },
      openNext: goOn,
      close: () => {
        leave();
        set({ active: null });
      },
      reset: () => {
        begun.clear();
        set({ active: null, finished: false, plan: [] });
      },
      put: ({ text, fresh }) => {
        const { active } = get();
        if (!active || draftStore.getState().locked) return;
        let { place } = active;
        const field = fieldsOf(place)[active.field];
        if (!field) return;
        if (place.id === null && text.trim() !== '') {
          const id = draftStore.getState().addPlaced(place.where);
          begun.add(id);
          const where = valueAt(draft().job, ['readings', id]) as Extract<SurveyPlace, { id: string }>['where'];
          place = { ...place, key: keyOfItem('readings', id), id, where } as SurveyPlace;
        }
        set({ active: { ...active, place, text, fresh, fault: null } });
        const path = pathOf(place, field);
        if (path) draftStore.getState().type(path, field.kind, text);
      },
      submit: () => {
        const { active } = get();
        if (!active) return;
        const field = fieldsOf(active.place)[active.field];
        const path = field && pathOf(active.place, field);
        if (path && active.text.trim() !== '') {
          const fault = fieldFault(draft(), path, field.kind, active.text);
          if (fault !== null) {
            set({ active: { ...active, fault } });
            return;
          }
        }
        goOn();
      },
      skip: goOn,
      enterAll: (texts) => {
        for (const text of texts) {
          if (get().active === null) get().openNext();
          const before = get().active;
          if (before === null) return;
          get().put({ text, fresh: false });
          get().submit();
          if (get().active?.fault) return;
        }
      },
    };
  });
}

export type EntryStore = ReturnType<typeof createEntryStore>;
