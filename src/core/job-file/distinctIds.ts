import { z } from 'zod';

/**
 * Check that no two items of a list answer to one id. The gaps of plumb reading `r7` answer to `r7/0`, `r7/1`, … too.
 * Items that are faulty in other ways are looked at as far as they go.
 * @param unnamed what an item without an id answers to, by its index; nothing unless given
 */
export const distinctIds = (list: string, unnamed?: (index: number) => string) =>
  z.superRefine<unknown[]>(
    (items, context) => {
      const holder = new Map<string, number>();
      items.forEach((item, i) => {
        const names = namesOf(item, unnamed?.(i));
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

function namesOf(item: unknown, unnamed: string | undefined): string[] {
  if (typeof item !== 'object' || item === null) return [];
  const { id = unnamed, gaps } = item as { id?: unknown; gaps?: unknown };
  if (typeof id !== 'string') return [];
  return [id, ...(Array.isArray(gaps) ? gaps.map((_, k) => `${id}/${k}`) : [])];
}
