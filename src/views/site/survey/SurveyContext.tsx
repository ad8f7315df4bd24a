import { createContext, type ReactNode, useContext, useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import type { Job, NextReading, PlannedReading, Result, Unread } from '../../../core';
import { useDraft, useSession, useSessionState } from '../../../job';
import { createEntryStore, type EntryState, type EntryStore } from './entry-store';
import { keyOfEmpty, type SurveyPlace } from './place';
import { isAt } from './same-place';
import { type Survey, surveyOf } from './survey-places';
import { usePlan } from './usePlan';

interface SurveyInHand {
  entry: EntryStore;
  survey: Survey;
  /** the job last worked out with no number half typed */
  settled: { job: Job; result: Result } | null;
  /** where the next reading helps most */
  best: SurveyPlace | null;
}

const SurveyContext = createContext<SurveyInHand | null>(null);

/** The survey of the job in hand, for the drawing and the entry beside it. */
export function SurveyProvider({ children }: { children: ReactNode }) {
  const { draft } = useSession();
  const [entry] = useState(() => createEntryStore(draft));
  const settled = useSettled();
  const plan = useStore(entry, (state) => state.plan);
  const job = useDraft((state) => state.draft.job);
  const id = useDraft((state) => state.draft.id);
  usePlan(settled, entry);
  useEffect(() => {
    void id;
    return () => entry.getState().reset();
  }, [id, entry]);
  const survey = useMemo(() => surveyOf(job, plan), [job, plan]);
  const advised = settled?.result.adjustment.next ?? null;
  const value = useMemo(() => {
    const best = bestPlace(survey, plan, advised);
    const known = best === null || survey.places.includes(best);
    return { entry, settled, best, survey: known ? survey : { ...survey, places: [...survey.places, best] } };
  }, [entry, survey, plan, settled, advised]);
  return <SurveyContext value={value}>{children}</SurveyContext>;
}

/**
 * Through the plan's first round its next empty place; after that the advised one where the plan has it, else the plan's
 * next; once the plan is read, the advised one on top of it.
 */
function bestPlace(
  { places }: Survey,
  plan: readonly PlannedReading[],
  advised: NextReading | null,
): SurveyPlace | null {
  const isHere = ({ where }: SurveyPlace, planned: Unread) => JSON.stringify(where) === JSON.stringify(planned);
  const empty = places.filter(({ id }) => id === null);
  const [first] = empty;
  if (first && plan.some(({ reading, round }) => round === 1 && isHere(first, reading))) return first;
  const taken = places.some(
    ({ list, id, where }) => advised && list === 'readings' && id !== null && isAt(where, advised.reading),
  );
  if (!advised || taken) return first ?? null;
  const planned = empty.find((place) => isHere(place, advised.reading));
  const { reading: where } = advised;
  return planned ?? first ?? { key: keyOfEmpty(where, 0), list: 'readings', id: null, where, times: 1 };
}

export function useSurvey(): SurveyInHand {
  const survey = useContext(SurveyContext);
  if (!survey) throw new Error('useSurvey outside a SurveyProvider');
  return survey;
}

/** Part of the entry in hand, or one of its actions. */
export const useEntryState = <T,>(select: (state: EntryState) => T): T => useStore(useSurvey().entry, select);

/** What was worked out last while no number was half typed, so that nothing jumps under the hand. */
function useSettled(): { job: Job; result: Result } | null {
  const result = useSessionState((state) => state.result);
  const job = useSessionState((state) => state.solved);
  const working = useSessionState((state) => state.working);
  const typing = useDraft((state) => state.typing);
  const last = useRef<{ job: Job; result: Result } | null>(null);
  if (result && job && (last.current === null || (!working && typing === null)) && last.current?.result !== result) {
    last.current = { job, result };
  }
  return last.current;
}
