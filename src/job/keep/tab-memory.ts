/** Remembers, as long as the tab lives, which job it has in hand. */
export interface TabMemory {
  read(): string | null;
  write(id: string): void;
}

const key = 'nookwright-job';

/** The tab's own memory; nothing is remembered where the browser blocks it. */
export function tabMemory(): TabMemory {
  return {
    read: () => {
      try {
        return sessionStorage.getItem(key);
      } catch {
        return null;
      }
    },
    write: (id) => {
      try {
        sessionStorage.setItem(key, id);
      } catch {
        // The database still knows which job was the last.
      }
    },
  };
}
