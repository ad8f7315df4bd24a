import { type Keep, StorageFault } from '../keep';

/** A scan with each of its points, as it can be mended later. */
export interface WholeScan {
  /** x y z of each point in the job's frame, mm, as near as the scan alone tells */
  positions: Float32Array;
  /** what each point belongs to */
  labels: Uint8Array;
}

/** What became of the points of a scan. */
export type ScanKept = { ok: true } | { ok: false; why: string };

/**
 * The points of scans, beside the job that holds what was taken from them. They may be missing: a job is whole without
 * them.
 */
export interface Scans {
  /** Keeps the points where there is room to spare. */
  keep(job: string, id: string, scan: WholeScan): Promise<ScanKept>;
  read(job: string, id: string): Promise<WholeScan | null>;
  ids(job: string): Promise<string[]>;
  remove(job: string, id: string): Promise<void>;
}

/** Of the room that is left, at most this share is taken, so that jobs and photos find theirs. */
const mostOfRoom = 0.5;

type Room = () => Promise<{ quota?: number; usage?: number }>;
const browserRoom: Room = async () => (await globalThis.navigator?.storage?.estimate?.()) ?? {};

export function scansIn(keep: Keep, room: Room = browserRoom): Scans {
  return {
    keep: async (job, id, { positions, labels }) => {
      const bytes = positions.byteLength + labels.byteLength;
      try {
        const { quota, usage = 0 } = await room();
        if (quota !== undefined && bytes > mostOfRoom * (quota - usage)) return { ok: false, why: noRoom(bytes) };
        await keep.putScan({ job, id, positions, labels, keptAt: Date.now() });
        return { ok: true };
      } catch (error) {
        const full = StorageFault.of(error).trouble === 'full';
        return { ok: false, why: full ? noRoom(bytes) : 'The browser gave no storage for its points.' };
      }
    },
    read: async (job, id) => {
      try {
        const kept = await keep.scan(job, id);
        return kept ? { positions: kept.positions, labels: kept.labels } : null;
      } catch {
        return null;
      }
    },
    ids: async (job) => {
      try {
        return await keep.scanIds(job);
      } catch {
        return [];
      }
    },
    remove: (job, id) => keep.removeScan(job, id),
  };
}

const noRoom = (bytes: number): string => `There is no room here for its points (${Math.ceil(bytes / 1e6)} MB).`;
