import type { Page } from '@playwright/test';
import { onCard } from './drawings';
import { objectBytes } from './objectBytes';
import { watchWorkers } from './workerHeaps';

/** What is measured, by its name with its unit. */
export type Sample = Record<string, number>;

const KB = 1000;

/**
 * Measures a page, each time after what has no owner any more was collected.
 * @param withObjects the objects of its script too, which takes seconds
 */
export async function gaugesOf(page: Page, withObjects = false): Promise<() => Promise<Sample>> {
  const session = await page.context().newCDPSession(page);
  const workerHeaps = await watchWorkers(page);
  await session.send('HeapProfiler.enable');
  return async () => {
    // What a finaliser lets go of is collected by the second turn.
    for (let turn = 0; turn < 2; turn++) await session.send('HeapProfiler.collectGarbage');
    const { usedSize } = await session.send('Runtime.getHeapUsage');
    const { nodes, documents, jsEventListeners } = await session.send('Memory.getDOMCounters');
    const { drawings, geometries, textures, programs } = await onCard(page);
    const workers = Object.entries(await workerHeaps()).map(([name, bytes]) => [`worker ${name}, kB`, bytes / KB]);
    const stored = await page.evaluate(storedBytes);
    return {
      ...(withObjects && { 'objects of script, kB': (await objectBytes(session)) / KB }),
      'script heap with code, kB': usedSize / KB,
      ...Object.fromEntries(workers),
      'DOM nodes': nodes,
      documents,
      listeners: jsEventListeners,
      'drawings in 3D': drawings,
      geometries,
      textures,
      programs,
      'records in storage, kB': stored.records / KB,
      'storage on disk, kB': stored.disk / KB,
    };
  };
}

/** Bytes of the records as text, and of what the database takes with its log. */
async function storedBytes(): Promise<{ records: number; disk: number }> {
  const database = await new Promise<IDBDatabase>((done, failed) => {
    const opening = indexedDB.open('nookwright');
    opening.onsuccess = () => done(opening.result);
    opening.onerror = () => failed(opening.error);
  });
  let records = 0;
  for (const store of database.objectStoreNames) {
    const all = await new Promise<unknown[]>((done, failed) => {
      const reading = database.transaction(store).objectStore(store).getAll();
      reading.onsuccess = () => done(reading.result);
      reading.onerror = () => failed(reading.error);
    });
    records += JSON.stringify(all).length;
  }
  database.close();
  const estimate = (await navigator.storage.estimate()) as { usageDetails?: { indexedDB?: number }; usage?: number };
  return { records, disk: estimate.usageDetails?.indexedDB ?? estimate.usage ?? 0 };
}
