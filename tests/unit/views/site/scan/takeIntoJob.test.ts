import { beforeEach, describe, expect, it, vi } from 'vitest';
import type { ScanCells } from '../../../../../src/core';
import type { Session } from '../../../../../src/job';
import { blankJob } from '../../../../../src/job/blank';
import { draftOf } from '../../../../../src/job/draft';
import { createDraftStore } from '../../../../../src/job/draft-store';
import { useScan } from '../../../../../src/views/site/scan/scan-store';
import { takeIntoJob } from '../../../../../src/views/site/scan/take-into-job';

const grid = { from: [0, 0] as [number, number], size: 50, columns: 1, value: [0], sd: [1], points: 9, noise: 1 };
const cells: ScanCells = { points: 9, surfaces: { back: grid }, front: { left: [], right: [] } };
let condensed: (cells: ScanCells) => void;

vi.mock('../../../../../src/job', async (original) => ({
  ...(await original<object>()),
  condenseInWorker: () => ({
    done: new Promise<ScanCells>((resolve) => {
      condensed = resolve;
    }),
    cancel: () => undefined,
  }),
}));

const sorted = {
  source: 'a.ply',
  id: null,
  positions: new Float32Array(9),
  labels: new Uint8Array(3),
  quality: null,
};

function open() {
  const draft = createDraftStore(draftOf(blankJob(), 'one'));
  const told: string[] = [];
  const kept: string[] = [];
  const session = {
    draft,
    tell: (words: string) => told.push(words),
    scans: {
      keep: async (job: string, id: string) => {
        kept.push(`${job} ${id}`);
        return { ok: true };
      },
      remove: async () => undefined,
    },
  } as unknown as Session;
  useScan.getState().enter('one');
  useScan.getState().show(sorted);
  return { draft, told, kept, session, scans: () => draft.getState().draft.job.scans };
}

describe('a sorted scan', () => {
  beforeEach(() => useScan.getState().enter('none'));

  it('comes into the job that it is for, and its points are kept with it', async () => {
    const { session, scans, told, kept } = open();
    const taking = takeIntoJob(session, sorted, true);
    expect(useScan.getState().stage.at).toBe('working');
    condensed(cells);
    await taking;
    expect(scans()).toMatchObject([{ id: 'scan1', kind: 'scan', source: 'a.ply', points: 9 }]);
    expect(kept).toEqual(['one scan1']);
    expect(told.join()).toMatch(/points are kept/);
    expect(useScan.getState().stage.at).toBe('choosing');
  });

  it('does not come into another job that was opened meanwhile, and stays at hand', async () => {
    const { draft, session, scans, told, kept } = open();
    const taking = takeIntoJob(session, sorted, true);
    draft.getState().take(draftOf(blankJob(), 'two'));
    condensed(cells);
    await taking;
    expect(scans()).toEqual([]);
    expect([...kept, ...told]).toEqual([]);
    expect(useScan.getState().stage.at).toBe('sorted');
    expect(useScan.getState().fault).toMatch(/Another job was opened/);
  });

  it('is not taken where no wall has enough points', async () => {
    const { session, scans } = open();
    const taking = takeIntoJob(session, sorted, true);
    condensed({ ...cells, surfaces: {} });
    await taking;
    expect(scans()).toEqual([]);
    expect(useScan.getState().fault).toMatch(/No wall has enough points/);
  });
});
