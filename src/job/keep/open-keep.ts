import { browserKeep } from './database';
import type { Keep } from './keep';
import { memoryKeep } from './memory';
import { StorageFault, type StorageTrouble } from './storage-fault';

/** Some browsers never answer in a private window. */
const patience = 5000;

export interface OpenedKeep {
  keep: Keep;
  /** why nothing outlives this page; null where the browser keeps it */
  trouble: StorageTrouble | null;
}

/** Opens the browser's storage, or keeps in memory where there is none. Never rejects. */
export async function openKeep(open: () => Promise<Keep> = browserKeep, wait = patience): Promise<OpenedKeep> {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const tooLate = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new StorageFault('blocked')), wait);
  });
  try {
    return { keep: await Promise.race([open(), tooLate]), trouble: null };
  } catch (error) {
    return { keep: memoryKeep(), trouble: StorageFault.of(error).trouble };
  } finally {
    clearTimeout(timer);
  }
}
