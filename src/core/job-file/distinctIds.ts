import { z } from 'zod';

/**
 * Check that no two items of a list answer to one id. The gaps of plumb reading `r7` answer to `r7/0`, `r7/1`, … too.
 * Items that are faulty in other ways are looked at as far as they go.
 */
export const distinctIds = (list: string) =>
  z.superRefine<unknown[]>(
    (items, context) => {
      const holder = new Map<string, number>();
      items.forEach((item, i) => {
        const names = namesOf(item);
        const taken = names.find((name) => holder.has(name));
        if (taken !== undefined) {
          const message = `"${taken}" already names ${list}[${holder.get(taken)}]; give each an id of its own`;
          context.addIssue({ code: 'custom', path: [i, 'id'], message });
        }
        for (const name of names) if (!holder.has(name)) holder.set(name, i);
      });
    },
    { when: ({ value }) => Array.isArray(value) },
  );

function namesOf(item: unknown): string[] {
  if (typeof item !== 'object' || item === null) return [];
  const { id, gaps } = item as { id?: unknown; gaps?: unknown };
  if (typeof id !== 'string') return [];
  return [id, ...(Array.isArray(gaps) ? gaps.map((_, k) => `${id}/${k}`) : [])];
}
