import { create } from 'zustand';
import { LABEL, LABEL_NAMES, type LabelName, type SegmentOptions, type SegmentQuality } from '../../../core';
import { findInWorker, readInWorker } from '../../../job';
import {
  extentOf,
  guessUnit,
  guessUp,
  labelCounts,
  type RawScan,
  type Relabelled,
  relabel,
  type ScanUnit,
  type TableLayout,
  takeBack,
  type Up,
} from '../../../scan';

/** What a file was read as, and what the person says of it. */
export interface Understood {
  files: readonly File[];
  scan: RawScan;
  unit: ScanUnit;
  up: Up;
}

/** A scan whose points are sorted into parts; positions in the job's frame, mm. */
export interface Sorted {
  source: string;
  /** of the scan in the job that it was before; null for a new one */
  id: string | null;
  positions: Float32Array;
  /** changed in place; `revision` tells when */
  labels: Uint8Array;
  quality: SegmentQuality | null;
}

export type Stage =
  | { at: 'choosing' }
  | { at: 'working'; what: string; share: number; stop: () => void }
  | ({ at: 'understood' } & Understood)
  | ({ at: 'sorted' } & Sorted);

export interface Picked {
  /** numbers of points, going up */
  points: Uint32Array;
  /** how they were picked, as in "drawn around" */
  how: string;
}

interface ScanInHand {
  stage: Stage;
  /** a sentence that says what went wrong last */
  fault: string | null;
  counts: number[];
  picked: Picked | null;
  visible: ReadonlySet<LabelName>;
  emphasised: LabelName | null;
  lasso: boolean;
  done: Relabelled[];
  undone: Relabelled[];
}

interface ScanState extends ScanInHand {
  /** identity of the job that the scan in hand is for */
  job: string | null;
  revision: number;
  /** Takes up the scan that this job had in hand; that of the job before is kept for when it comes into hand again. */
  enter(job: string): void;
  read(files: readonly File[], table?: TableLayout | null): Promise<void>;
  say(what: Partial<Pick<Understood, 'unit' | 'up'>>): void;
  find(options: SegmentOptions): Promise<void>;
  show(sorted: Sorted): void;
  /** Shows that work goes on; `back` is where stopping it leads. */
  work(what: string, stop: () => void): void;
  tell(share: number): void;
  back(stage: Stage, fault?: string | null): void;
  putAway(): void;
  pick(picked: Picked | null): void;
  assign(part: LabelName): void;
  undo(): void;
  redo(): void;
  setVisible(part: LabelName, on: boolean): void;
  emphasise(part: LabelName | null): void;
  setLasso(on: boolean): void;
}

const choosing: Stage = { at: 'choosing' };
const everyPart = new Set(LABEL_NAMES);
const fresh = {
  fault: null,
  counts: [] as number[],
  picked: null,
  visible: everyPart as ReadonlySet<LabelName>,
  emphasised: null,
  lasso: false,
  done: [] as Relabelled[],
  undone: [] as Relabelled[],
};

const stoppedByItself =
  'The work on this scan stopped by itself, most likely for want of memory. Close other pages, or save the scan with fewer points. The job is as it was.';

/** Scans of jobs that are not in hand. */
const others = new Map<string, ScanInHand>();

/** The scan in hand, from the file to its sorted points. It stays while another part of the survey is looked at. */
export const useScan = create<ScanState>()((set, get) => ({
  stage: choosing,
  job: null,
  revision: 0,
  ...fresh,

  enter: (job) => {
    if (get().job === job) return;
    const { stage } = get();
    if (stage.at === 'working') stage.stop();
    set((state) => {
      if (state.job !== null) others.set(state.job, state);
      const own = others.get(job) ?? { ...fresh, stage: choosing };
      others.delete(job);
      return { ...own, job, revision: state.revision + 1 };
    });
  },

  read: async (files, table = null) => {
    const before = get().stage;
    const home = before.at === 'understood' ? before : choosing;
    const work = readInWorker(files, table, (share) => get().tell(share));
    get().work(`Reading ${files[0]!.name}`, () => {
      work.cancel();
      get().back(home);
    });
    try {
      const read = await work.done;
      if (!read.ok) {
        get().back(home, read.message);
        return;
      }
      const { scan } = read;
      const extent = extentOf(scan.positions);
      const told = before.at === 'understood' && before.files === files ? before : null;
      const unit = told?.unit ?? guessUnit(scan, extent);
      const up = told?.up ?? guessUp(scan, extent);
      set({ ...fresh, stage: { at: 'understood', files, scan, unit, up } });
    } catch {
      get().back(choosing, stoppedByItself);
    }
  },

  say: (what) => set(({ stage }) => (stage.at === 'understood' ? { stage: { ...stage, ...what }, fault: null } : {})),

  find: async (options) => {
    const before = get().stage;
    if (before.at !== 'understood') return;
    const work = findInWorker(before.scan, before.unit, before.up, options, (share) => get().tell(share));
    get().work('Finding the walls', () => {
      work.cancel();
      get().back(before);
    });
    try {
      const found = await work.done;
      if (!found.ok) {
        get().back(before, `${found.reason} See that unit and up are right.`);
        return;
      }
      const { positions, labels, quality } = found;
      get().show({ source: before.files[0]!.name, id: null, positions, labels, quality });
    } catch {
      get().back(before, stoppedByItself);
    }
  },

  show: (sorted) =>
    set(({ revision }) => ({
      ...fresh,
      stage: { at: 'sorted', ...sorted },
      counts: labelCounts(sorted.labels, LABEL_NAMES.length),
      revision: revision + 1,
    })),

  work: (what, stop) => set({ stage: { at: 'working', what, share: 0, stop }, fault: null }),
  tell: (share) => set(({ stage }) => (stage.at === 'working' ? { stage: { ...stage, share } } : {})),
  back: (stage, fault = null) => set({ stage, fault }),
  putAway: () => set(({ revision }) => ({ ...fresh, stage: choosing, revision: revision + 1 })),

  pick: (picked) => set({ picked: picked?.points.length === 0 ? null : picked }),
  assign: (part) => {
    const { stage, picked } = get();
    if (stage.at !== 'sorted' || !picked) return;
    const change = relabel(stage.labels, picked.points, LABEL[part]);
    set(({ done }) => ({ done: [...done, change], undone: [], ...recounted(stage, get().revision) }));
  },
  undo: () => {
    const { stage, done, undone } = get();
    const last = done.at(-1);
    if (stage.at !== 'sorted' || !last) return;
    takeBack(stage.labels, last);
    set({ done: done.slice(0, -1), undone: [...undone, last], ...recounted(stage, get().revision) });
  },
  redo: () => {
    const { stage, done, undone } = get();
    const next = undone.at(-1);
    if (stage.at !== 'sorted' || !next) return;
    relabel(stage.labels, next.points, next.label);
    set({ done: [...done, next], undone: undone.slice(0, -1), ...recounted(stage, get().revision) });
  },
  setVisible: (part, on) =>
    set(({ visible }) => {
      const now = new Set(visible);
      if (on) now.add(part);
      else now.delete(part);
      return { visible: now };
    }),
  emphasise: (emphasised) => set({ emphasised }),
  setLasso: (lasso) => set({ lasso }),
}));

const recounted = ({ labels }: Sorted, revision: number) => ({
  counts: labelCounts(labels, LABEL_NAMES.length),
  revision: revision + 1,
  picked: null,
});
