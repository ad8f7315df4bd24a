import { createStore } from 'zustand/vanilla';
import { type Fault, type Job, parseJobText, type Result } from '../core';
import type { Keep } from './database';
import { draftOf } from './draft';
import { createDraftStore } from './draft-store';
import { keptDraft } from './kept-draft';
import { latestOnly } from './latest-only';
import { type SetAside, usable } from './usable';

export interface SessionState {
  /** what follows from the job; stays while a newer one is worked out */
  result: Result | null;
  /** the job that `result` belongs to */
  solved: Job | null;
  working: boolean;
  /** a sentence where the last job could not be worked out */
  failure: string | null;
  setAside: SetAside[];
  /** a file that could not be opened, and why */
  badFile: { name: string; faults: Fault[] } | null;
  keeping: 'kept' | 'writing' | 'not-kept';
  /** a sentence to tell once */
  notice: string | null;
}

export interface SessionParts {
  solve(job: Job): Promise<Result>;
  keep: Keep;
  /** the job that a first visit opens on */
  first: Job;
  newId?: () => string;
}

/** A visit: the draft in hand, its result worked out as it changes, and each change kept. */
export async function openSession({ solve, keep, first, newId = () => crypto.randomUUID() }: SessionParts) {
  const state = createStore<SessionState>()(() => ({
    result: null,
    solved: null,
    working: true,
    failure: null,
    setAside: [],
    badFile: null,
    keeping: 'kept',
    notice: null,
  }));
  const { setState } = state;
  const draftStore = createDraftStore((await restore(keep, setState)) ?? draftOf(first, newId()));

  const requestSolve = latestOnly(solve, {
    done: (solved, result) => setState({ result, solved, failure: null, working: latestJob !== solved }),
    failed: (job, error) =>
      setState({
        working: latestJob !== job,
        failure:
          `This job could not be worked out (${error instanceof Error ? error.message : String(error)}). ` +
          'The drawing shows it as it was before the last change; undo brings that back.',
      }),
  });
  let latestJob: Job | null = null;
  const follow = () => {
    const { draft, typing } = draftStore.getState();
    const { setAside, ...understood } = usable(draft, typing);
    setState({ setAside });
    if (!understood.ok) {
      const [fault] = understood.faults;
      setState({ failure: `This job cannot be worked out: ${fault?.path} ${fault?.message}.` });
      return;
    }
    if (JSON.stringify(understood.job) === JSON.stringify(latestJob)) return;
    latestJob = understood.job;
    setState({ working: true });
    requestSolve(understood.job);
  };

  const requestKeep = latestOnly(keep.put, {
    done: () => setState({ keeping: 'kept' }),
    failed: () => setState({ keeping: 'not-kept' }),
  });
  draftStore.subscribe((now, before) => {
    if (now.draft !== before.draft) {
      if (state.getState().keeping === 'kept') setState({ keeping: 'writing' });
      if (state.getState().notice !== null) setState({ notice: null });
      requestKeep({ id: now.draft.id, draft: now.draft, changedAt: Date.now() });
    }
    if (now.draft !== before.draft || now.typing !== before.typing) follow();
  });
  follow();

  return {
    draft: draftStore,
    state,
    openJob: (job: Job) => {
      const earlier = draftStore.getState().draft.job.name;
      draftStore.getState().open(job, newId());
      setState({ badFile: null, notice: `Opened ${job.name}. Undo brings ${earlier} back.` });
    },
    /** Opens the text of a job file; a faulty one leaves the job in hand as it is and lists its faults. */
    openText: (name: string, text: string) => {
      const parsed = parseJobText(text);
      if (!parsed.ok) {
        setState({ badFile: { name, faults: parsed.faults } });
        return;
      }
      const earlier = draftStore.getState().draft.job.name;
      draftStore.getState().open(parsed.job, newId());
      setState({ badFile: null, notice: `Opened ${name}. Undo brings ${earlier} back.` });
    },
    dismissBadFile: () => setState({ badFile: null }),
    tell: (notice: string) => setState({ notice }),
    dismissNotice: () => setState({ notice: null }),
  };
}

export type Session = Awaited<ReturnType<typeof openSession>>;

async function restore(keep: Keep, setState: (part: Partial<SessionState>) => void) {
  try {
    const record = await keep.current();
    if (record === undefined) return null;
    const draft = keptDraft(record.draft);
    if (draft === null) {
      setState({
        notice:
          'The job from your last visit was kept by another version and cannot be shown here. It stays stored as it is.',
      });
    }
    return draft;
  } catch {
    setState({ keeping: 'not-kept' });
    return null;
  }
}
