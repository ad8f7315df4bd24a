import { z } from 'zod';
import type { KeptJob } from '../keep';
import type { Journal } from './journal';

const prefix = 'nookwright-unwritten-';
const noted = z.object({ id: z.string(), draft: z.unknown(), changedAt: z.number(), revision: z.number() });

/**
 * The journal in `localStorage`, the browser's only storage that answers at once. Where it is blocked, nothing is
 * noted.
 */
export function browserJournal(): Journal {
  return {
    note: (job) =>
      attempt(() => {
        const { id, draft, changedAt, revision } = job;
        try {
          localStorage.setItem(prefix + id, JSON.stringify({ id, draft, changedAt, revision }));
          return true;
        } catch {
          // No room: an older note would stand for the job as it is no longer.
          localStorage.removeItem(prefix + id);
          return false;
        }
      }) ?? false,
    read: (id) =>
      attempt((): KeptJob | null => {
        const text = localStorage.getItem(prefix + id);
        return text === null ? null : (noted.parse(JSON.parse(text)) as KeptJob);
      }) ?? null,
    ids: () =>
      attempt(() =>
        Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? '')
          .filter((key) => key.startsWith(prefix))
          .map((key) => key.slice(prefix.length)),
      ) ?? [],
    clear: (id) => void attempt(() => localStorage.removeItem(prefix + id)),
  };
}

function attempt<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch {
    return undefined;
  }
}
