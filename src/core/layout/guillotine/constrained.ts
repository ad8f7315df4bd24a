import { Heap } from './heap';
import { outsideBound } from './outsideBound';
import { type RectangleKind, unconstrainedGuillotine } from './unconstrained';

/** A kind of rectangle of which `most` may be cut, together with the others of its `group` (one piece in two positions). */
export interface LimitedKind extends RectangleKind {
  most: number;
  /** index; without it the kind is alone */
  group?: number;
}

/** How a rectangle is made up: one piece, or two rectangles joined side by side or one on the other. */
export type Build = { kind: number } | { joined: 'across' | 'up'; first: BuiltRectangle; second: BuiltRectangle };

/** A rectangle put together from pieces, with what is wasted inside it. */
export interface BuiltRectangle {
  width: number;
  height: number;
  value: number;
  /** pieces of each group in it */
  counts: Uint8Array;
  build: Build;
}

export interface GuillotineCut {
  /** null where nothing fits */
  best: BuiltRectangle | null;
  /** false where the search was stopped at its limit; `best` is then the best found */
  exact: boolean;
}

/**
 * Greatest total value of a guillotine cut of one rectangle with a limit on each kind, fixed orientation, sizes in whole
 * units: best-first search from the bottom up (Viswanathan and Bagchi, Best-first search methods for constrained
 * two-dimensional cutting stock problems, 1993). Rectangles are joined in the order of what the stock could still yield
 * with them in its corner; the first that cannot be bettered ends the search.
 * @param limit rectangles looked at before the search is stopped
 */
export function constrainedGuillotine(
  kinds: readonly LimitedKind[],
  width: number,
  height: number,
  limit = 4000,
): GuillotineCut {
  const groups = groupsOf(kinds);
  const most = groups.most;
  const each = kinds.map((kind) => kind.most);
  const outside = outsideBound(unconstrainedGuillotine(kinds, width, height, each), width, height);
  const open = new Heap<{ bound: number; rectangle: BuiltRectangle }>((a, b) => a.bound > b.bound);
  const seen = new Map<string, BuiltRectangle[]>();
  const closed: BuiltRectangle[] = [];
  let best: BuiltRectangle | null = null;

  const offer = (rectangle: BuiltRectangle): void => {
    if (rectangle.width > width || rectangle.height > height) return;
    if (isDominated(rectangle, seen)) return;
    if (best === null || rectangle.value > best.value) best = rectangle;
    const bound = rectangle.value + outside(rectangle.width, rectangle.height);
    if (bound > best.value) open.push({ bound, rectangle });
  };

  kinds.forEach((kind, k) => {
    if (kind.most < 1) return;
    const counts = new Uint8Array(most.length);
    counts[groups.of[k]!] = 1;
    offer({ width: kind.width, height: kind.height, value: kind.value, counts, build: { kind: k } });
  });
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    const found = best as BuiltRectangle | null;
    if (found !== null && next.bound <= found.value) break;
    if (closed.length >= limit) return { best: found, exact: false };
    closed.push(next.rectangle);
    for (const other of closed) {
      const counts = sumWithin(next.rectangle.counts, other.counts, most);
      if (counts === null) continue;
      offer(join('across', next.rectangle, other, counts));
      offer(join('up', next.rectangle, other, counts));
    }
  }
  return { best, exact: true };
}

function groupsOf(kinds: readonly LimitedKind[]): { of: number[]; most: number[] } {
  const names = [...new Set(kinds.map(({ group }, k) => group ?? -1 - k))];
  const of = kinds.map(({ group }, k) => names.indexOf(group ?? -1 - k));
  return {
    of,
    most: names.map((_, g) => Math.max(...kinds.filter((_kind, k) => of[k] === g).map((kind) => kind.most))),
  };
}

function join(
  joined: 'across' | 'up',
  first: BuiltRectangle,
  second: BuiltRectangle,
  counts: Uint8Array,
): BuiltRectangle {
  const across = joined === 'across';
  return {
    width: across ? first.width + second.width : Math.max(first.width, second.width),
    height: across ? Math.max(first.height, second.height) : first.height + second.height,
    value: first.value + second.value,
    counts,
    build: { joined, first, second },
  };
}

function sumWithin(a: Uint8Array, b: Uint8Array, most: readonly number[]): Uint8Array | null {
  const counts = new Uint8Array(a.length);
  for (let k = 0; k < a.length; k++) {
    counts[k] = a[k]! + b[k]!;
    if (counts[k]! > most[k]!) return null;
  }
  return counts;
}

/** True where the same pieces were put together in no more room before; else remembers the rectangle. */
function isDominated(rectangle: BuiltRectangle, seen: Map<string, BuiltRectangle[]>): boolean {
  const key = rectangle.counts.join();
  const same = seen.get(key);
  if (same === undefined) {
    seen.set(key, [rectangle]);
    return false;
  }
  if (same.some(({ width, height }) => width <= rectangle.width && height <= rectangle.height)) return true;
  same.push(rectangle);
  return false;
}
