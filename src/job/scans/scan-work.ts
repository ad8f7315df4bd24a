import { proxy, type Remote, wrap } from 'comlink';
import type { ScanCells, SegmentOptions } from '../../core';
import type { RawScan, ScanRead, ScanUnit, TableLayout, Up } from '../../scan';
import type { AlcoveFound, ScanWorker } from '../scan.worker';

/** Work on a scan in a worker of its own. */
export interface ScanWork<T> {
  /** rejects where the worker stops by itself, as when memory is out; never settles once it is cancelled */
  done: Promise<T>;
  /** Ends the worker at once. */
  cancel(): void;
}

type Tell = (share: number) => void;

/** Reads a file and those that came with it. */
export const readInWorker = (files: readonly File[], table: TableLayout | null, tell: Tell): ScanWork<ScanRead> =>
  inWorker((remote) => remote.read(files, table, proxy(tell)) as Promise<ScanRead>);

/** Finds the alcove in a scan and puts its points into the job's frame. */
export const findInWorker = (
  { positions, origin }: Pick<RawScan, 'positions' | 'origin'>,
  unit: ScanUnit,
  up: Up,
  options: SegmentOptions,
  tell: Tell,
): ScanWork<AlcoveFound> =>
  inWorker((remote) => remote.find({ positions, origin }, unit, up, options, proxy(tell)) as Promise<AlcoveFound>);

/** @param positions in the job's frame */
export const condenseInWorker = (positions: Float32Array, labels: Uint8Array, tell: Tell): ScanWork<ScanCells> =>
  inWorker((remote) => remote.condense(positions, labels, proxy(tell)));

function inWorker<T>(call: (remote: Remote<ScanWorker>) => Promise<T>): ScanWork<T> {
  const worker = new Worker(new URL('../scan.worker.ts', import.meta.url), { type: 'module', name: 'scan' });
  // A wrapping that is collected takes no more calls, so the promise holds on to it.
  const remote = wrap<ScanWorker>(worker);
  const done = new Promise<T>((resolve, reject) => {
    worker.addEventListener('error', () => reject(new Error('the worker stopped')), { once: true });
    call(remote).then(resolve, reject);
  });
  const end = () => worker.terminate();
  done.then(end, end);
  return { done, cancel: end };
}
