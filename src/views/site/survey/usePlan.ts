import { useEffect, useRef } from 'react';
import type { Job, Result } from '../../../core';
import { surveyPlanner, useDraft, useSession } from '../../../job';
import { useTouched } from '../../parts';
import type { EntryStore } from './entry-store';

/** One for as long as the app is open: its worker stays when the survey is left. */
const plan = surveyPlanner();

/** A plan stands until the alcove turns out this much larger or smaller than it was made for, mm. */
const HOLDS = 40;

interface MadeFor {
  id: string;
  /** the readings that it goes on top of */
  on: string[];
  sizes: number[];
  words: string;
}

/**
 * Keeps the plan of what is still to be read: made anew for another job, and where sizes, units or the panels' height
 * turn out otherwise. It is first made when somebody is there, so that opening the app does not fetch what plans. Where it
 * cannot be made the person is told once and enters readings without it; each further change of the job tries again.
 */
export function usePlan(settled: { job: Job; result: Result } | null, entry: EntryStore): void {
  const { tell } = useSession();
  const id = useDraft(({ draft }) => draft.id);
  const madeFor = useRef<MadeFor | null>(null);
  const told = useRef(false);
  const seen = useRef(settled);
  const touched = useTouched();
  useEffect(() => {
    // Right after another job is opened what is settled still belongs to the one before.
    const before = madeFor.current !== null && madeFor.current.id !== id && seen.current === settled;
    seen.current = settled;
    if (!settled || before || !touched) return;
    const now = needs(settled.job, settled.result, id);
    if (madeFor.current && stillHolds(madeFor.current, now)) return;
    madeFor.current = now;
    plan(settled.job).then(
      (planned) => {
        told.current = false;
        if (madeFor.current === now) entry.getState().setPlan(planned);
      },
      () => {
        if (madeFor.current === now) madeFor.current = null;
        if (told.current) return;
        told.current = true;
        tell('The survey could not be planned. Readings can be entered all the same: add them to the record.');
      },
    );
  }, [settled, id, entry, tell, touched]);
}

const needs = ({ display, fit, rim, readings }: Job, { walls, front, rim: top }: Result, id: string): MadeFor => ({
  id,
  on: readings.filter(({ off }) => !off).map((reading) => reading.id),
  sizes: [
    ...(['left', 'right'] as const).flatMap((side) => [
      middle(walls[side].sampled.value.flat()),
      middle(front[side].value),
    ]),
    middle(top.value.flat()),
    fit.top,
  ],
  words: `${display} ${rim.width}`,
});

const middle = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;

const stillHolds = (before: MadeFor, now: MadeFor): boolean =>
  before.id === now.id &&
  before.words === now.words &&
  before.on.every((reading) => now.on.includes(reading)) &&
  before.sizes.every((size, i) => Math.abs(size - now.sizes[i]!) <= HOLDS);
