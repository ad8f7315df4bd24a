import { expose, transfer } from 'comlink';
import {
  condenseScan,
  movePoints,
  type RigidFrame,
  type ScanCells,
  type SegmentOptions,
  type SegmentQuality,
  segmentScan,
} from '../core';
import { type RawScan, readScan, type ScanRead, type ScanUnit, type TableLayout, toCloud, type Up } from '../scan';

type Tell = (share: number) => void;

/** The alcove in a scan, or a sentence that says why none was found. */
export type AlcoveFound =
  | { ok: true; positions: Float32Array; labels: Uint8Array; quality: SegmentQuality }
  | { ok: false; reason: string };

/** What is told is told at most so often, ms: telling costs more than the work between. */
const tellEach = 60;

function seldom(tell: Tell): Tell {
  let last = 0;
  return (share) => {
    const now = performance.now();
    if (now - last < tellEach) return;
    last = now;
    tell(share);
  };
}

/** Points that stand in the job's frame need no motion into it. */
const standing: RigidFrame = { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] };

const scans = {
  read: async ([file, ...others]: readonly File[], table: TableLayout | null, tell: Tell): Promise<ScanRead> => {
    const read = await readScan(file!, { others, table, onProgress: seldom(tell) });
    return read.ok ? transfer(read, [read.scan.positions.buffer]) : read;
  },

  find: (
    raw: Pick<RawScan, 'positions' | 'origin'>,
    unit: ScanUnit,
    up: Up,
    options: SegmentOptions,
    tell: Tell,
  ): AlcoveFound => {
    const cloud = toCloud(raw, unit, up);
    const found = segmentScan(cloud, { ...options, onProgress: seldom(tell) });
    if ('reason' in found) return { ok: false, reason: found.reason };
    const { labels, quality } = found;
    const { positions } = cloud;
    movePoints(found.frame, positions, positions);
    return transfer({ ok: true as const, positions, labels, quality }, [positions.buffer, labels.buffer]);
  },

  /** @param positions in the job's frame */
  condense: (positions: Float32Array, labels: Uint8Array, tell: Tell): ScanCells =>
    condenseScan({ positions, origin: [0, 0, 0] }, labels, standing, { onProgress: seldom(tell) })!,
};
export type ScanWorker = typeof scans;

expose(scans);
