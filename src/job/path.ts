/**
 * Where a field stands in a draft: `['fit', 'top']`, `['readings', 'r1', 'value']`, `['readings', 'r7', 'gaps', 0, 'height']`.
 * Items of lists such as `readings`, `fixtures` and `studs` are addressed by id, so that a path outlives a change of order.
 */
export type FieldPath = readonly (string | number)[];

/** A path as the key of a record; ids may hold any character. */
export const fieldKey = (path: FieldPath): string => JSON.stringify(path);

export const pathOfKey = (key: string): FieldPath => JSON.parse(key) as FieldPath;

/** Whether a key that was read from storage or a file names a field. */
export function isFieldKey(key: string): boolean {
  try {
    const path: unknown = JSON.parse(key);
    return Array.isArray(path) && path.length > 0 && path.every((part) => ['string', 'number'].includes(typeof part));
  } catch {
    return false;
  }
}

export const startsWith = (path: FieldPath, start: FieldPath): boolean => start.every((part, i) => path[i] === part);

type Container = Record<string | number, unknown>;

const stepInto = (value: unknown, part: string | number): unknown => {
  if (Array.isArray(value) && typeof part === 'string') return value.find((item: { id?: unknown }) => item.id === part);
  return value === null || value === undefined ? undefined : (value as Container)[part];
};

/** The value at a path, undefined where there is none. */
export const valueAt = (root: unknown, path: FieldPath): unknown => path.reduce(stepInto, root);

/**
 * A copy of `root` with `value` at the path; untouched parts are shared. `undefined` removes the key, and objects on
 * the way that lack are made, a list where its first item is set. A place at the end of a list adds an item; an id that
 * is not in its list leaves everything as it is.
 */
export function withValueAt<T>(root: T, path: FieldPath, value: unknown): T {
  const [part, ...rest] = path;
  if (part === undefined) return value as T;
  if (root === undefined && part === 0)
    return (value === undefined ? root : [withValueAt(undefined, rest, value)]) as T;
  if (Array.isArray(root)) {
    const index = typeof part === 'number' ? part : root.findIndex((item: { id?: unknown }) => item.id === part);
    if (index < 0 || index > root.length) return root;
    if (index === root.length) return [...root, withValueAt(undefined, rest, value)] as T;
    return root.map((item, i) => (i === index ? withValueAt(item, rest, value) : item)) as T;
  }
  const copy: Container = { ...(root as Container | undefined) };
  const inner = withValueAt(copy[part], rest, value);
  if (inner === undefined) delete copy[part];
  else copy[part] = inner;
  return copy as T;
}
