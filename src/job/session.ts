import { createStore } from 'zustand/vanilla';
import { basisOf, type Fault, type Job, parseJobText, type Result } from '../core';
import { draftOf } from './draft';
import { createDraftStore } from './draft-store';
import { InHand } from './in-hand';
import { type Journal, noJournal } from './journal';
import { type Keep, type KeptJob, StorageFault, type StorageTrouble } from './keep';
import { keptBy } from './kept-by';
import { keptDraft } from './kept-draft';
import { latestOnly } from './latest-only';
import { photosIn } from './photos';
import { scansIn } from './scans';
import { type Shelf, shelfOf } from './shelf';
import { onlyTab, type Tabs } from './tabs';
import { type SetAside, usable } from './usable';

export interface SessionState {
  /** what follows from the job; stays while a newer one is worked out */
  result: Result | null;
  /** the job that `result` belongs to */
  solved: Job | null;
  working: boolean;
  /** a sentence where the last job could not be worked out */
  failure: string | null;
  /** the job that was understood but could not be worked out last: another try may do it */
  unsolved: Job | null;
  setAside: SetAside[];
  /** a file that could not be opened, and why */
  badFile: { name: string; faults: Fault[] } | null;
  keeping: 'kept' | 'writing' | 'not-kept';
  /** why the job is not kept; null where it is */
  trouble: StorageTrouble | null;
  /** a job was not in the storage any more and was kept anew, and nobody has said yet that he has seen this */
  cleared: boolean;
  /** names of jobs besides the one in hand whose last changes are not kept yet */
  unkept: string[];
  /** another page edits this job; it is shown here as it is there */
  elsewhere: boolean;
  /** goes up when the list of jobs may have changed */
  listed: number;
  /** a sentence to tell once */
  notice: string | null;
}

export interface SessionParts {
  solve(job: Job): Promise<Result>;
  keep: Keep;
  /** why nothing outlives this page, where that is known from the start */
  trouble?: StorageTrouble | null;
  tabs?: Tabs;
  journal?: Journal;
  /** the job that a first visit opens on */
  first: Job;
  newId?: () => string;
}

/** Results kept: of the job in hand, of its three choices, and the one before. */
const MOST_KEPT = 5;

/** A visit: the draft in hand, its result worked out as it changes, and each change kept. */
export async function openSession({
  solve,
  keep,
  trouble = null,
  tabs = onlyTab,
  journal = noJournal,
  first,
  newId = () => crypto.randomUUID(),
}: SessionParts) {
  const state = createStore<SessionState>()(() => ({
    result: null,
    solved: null,
    working: true,
    failure: null,
    unsolved: null,
    setAside: [],
    badFile: null,
    keeping: trouble === null ? 'kept' : 'not-kept',
    trouble,
    cleared: false,
    unkept: [],
    elsewhere: false,
    listed: 0,
    notice: null,
  }));
  const { setState } = state;
  const { record, notice, readTrouble } = await restore(keep);
  if (notice !== null) setState({ notice });
  const restored = record === null ? null : keptDraft(record.draft);
  const draftStore = createDraftStore(restored ?? draftOf(first, newId()));

  const solveOnce = keptBy(basisOf, MOST_KEPT, solve);
  const requestSolve = latestOnly(solveOnce, {
    done: (solved, result) =>
      setState({ result, solved, failure: null, unsolved: null, working: latestJob !== solved }),
    failed: (job, error) =>
      setState({
        working: latestJob !== job,
        unsolved: job,
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
      setState({ failure: `This job cannot be worked out: ${fault?.path} ${fault?.message}.`, unsolved: null });
      return;
    }
    if (JSON.stringify(understood.job) === JSON.stringify(latestJob)) return;
    latestJob = understood.job;
    setState({ working: true });
    requestSolve(understood.job);
  };

  const inHand = new InHand({
    keep,
    tabs,
    // What is kept as long as the page alone goes by no note of an earlier one.
    journal: trouble === null ? journal : noJournal,
    store: draftStore,
    newId,
    report: {
      // Kept in memory alone is not kept.
      keeping: (keeping) => {
        if (trouble !== null) return;
        if (keeping === 'kept') setState({ keeping, trouble: null });
        else if (state.getState().keeping === 'kept') setState({ keeping });
      },
      trouble: (now) => setState({ keeping: 'not-kept', trouble: trouble ?? now }),
      elsewhere: (elsewhere) => setState({ elsewhere }),
      tell: (notice) => setState({ notice }),
      cleared: () => setState({ cleared: true }),
      unkept: (unkept) => setState({ unkept }),
      listed: () => setState(({ listed }) => ({ listed: listed + 1 })),
    },
  });
  let changedHere = false;
  draftStore.subscribe((now, before) => {
    const changed = now.draft !== before.draft;
    if (changed && now.draft.id === before.draft.id && !now.locked) changedHere = true;
    if (changed && now.draft.id === before.draft.id && state.getState().notice !== null) setState({ notice: null });
    if (changed || now.typing !== before.typing) follow();
  });
  await inHand.startWith(draftStore.getState().draft, restored && record);
  if (readTrouble !== null) setState({ keeping: 'not-kept', trouble: trouble ?? readTrouble });
  follow();
  await inHand.recoverOthers();

  const take = (job: Job, name: string, untouched: boolean) => {
    setState({ badFile: null });
    const done = inHand.takeNew(draftOf(job, newId()), untouched);
    setState({ notice: `Opened ${name}.` });
    return done;
  };
  const shelf: Shelf = shelfOf({ keep, tabs, inHand, draft: draftStore, first, newId, setState });
  return {
    draft: draftStore,
    /** Works out once more what could not be worked out. */
    workOutAgain: () => {
      const { unsolved } = state.getState();
      if (!unsolved) return;
      setState({ working: true, failure: null, unsolved: null });
      requestSolve(latestJob ?? unsolved);
    },
    /** Works out another job, such as a choice or one that came in a link. */
    solve: solveOnce,
    state,
    shelf,
    photos: photosIn(keep),
    scans: scansIn(keep),
    /** Takes up a demo or an empty job, which is kept as soon as it is changed. */
    openJob: (job: Job) => take(job, job.name, true),
    /** Takes up a job that somebody gave, such as one that came in a link; it is kept from the start. */
    keepJob: (job: Job) => take(job, job.name, false),
    /** Opens the text of a job file; a faulty one leaves the job in hand as it is and lists its faults. */
    openText: (name: string, text: string) => {
      const parsed = parseJobText(text);
      if (parsed.ok) void take(parsed.job, name, false);
      else setState({ badFile: { name, faults: parsed.faults } });
    },
    /** True where something that was typed would be lost if the page were closed now. */
    wouldLose: () => (trouble === null ? inHand.atRisk : changedHere),
    /** Gets the job from the page that edits it. */
    editHere: () => inHand.takeOver(),
    dismissBadFile: () => setState({ badFile: null }),
    tell: (notice: string) => setState({ notice }),
    dismissNotice: () => setState({ notice: null }),
    dismissCleared: () => setState({ cleared: false }),
  };
}

export type Session = Awaited<ReturnType<typeof openSession>>;

interface Restored {
  record: KeptJob | null;
  notice: string | null;
  readTrouble: StorageTrouble | null;
}

async function restore(keep: Keep): Promise<Restored> {
  try {
    const record = (await keep.current()) ?? null;
    if (record === null || keptDraft(record.draft) !== null) return { record, notice: null, readTrouble: null };
    const notice =
      'The job from your last visit was kept by another version and cannot be shown here. It stays stored as it is.';
    return { record: null, notice, readTrouble: null };
  } catch (error) {
    return { record: null, notice: null, readTrouble: StorageFault.of(error).trouble };
  }
}
