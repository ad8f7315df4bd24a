import type { Point } from './frame';

/** A tag to be placed, px of the drawing, y down. */
export interface LooseTag {
  key: string;
  /** the tag belongs on this line, and may lie anywhere along it */
  from: Point;
  to: Point;
  width: number;
  /** where along the line it lies best, 0 to 1 */
  best: number;
}

export interface PlacedTag {
  key: string;
  /** centre */
  x: number;
  y: number;
  /** the point of its line that it is led to */
  foot: Point;
}

interface Area {
  width: number;
  height: number;
}

/** Something on the drawing that tags keep off where they can, px: its middle and its size. */
export interface KeptFree extends Area {
  x: number;
  y: number;
}

/** Height and least width of the area that takes a touch, px (WCAG 2.5.5). */
export const TOUCH = 44;
/** Height that tags keep free of each other, px: more than the 24 px of WCAG 2.5.8. */
const APART = 31;
/** How much of its line a tag keeps off at either end. */
const KEEP_IN = 0.06;
const TRIES = 17;
/** How far beside its line a tag may lie where there is no room on it, px. */
const BESIDE = [0, APART, -APART, 2 * APART, -2 * APART, 3 * APART, -3 * APART];
/** After the first round each tag is placed again, the others where they are. */
const ROUNDS = 3;
/** What a pixel beside the line costs, in px² of cover. */
const BESIDE_COST = 3;
const AWAY_COST = 30;

type Spot = PlacedTag & Area;

/**
 * Puts each tag on its line, or beside it where others lie there, where it covers the others, and what is to be kept free,
 * least; within the drawing. Tags of short lines, which have the least choice, come first.
 */
export function placeTags(loose: readonly LooseTag[], area: Area, free: readonly KeptFree[] = []): PlacedTag[] {
  const order = [...loose].sort((a, b) => lengthOf(a) - lengthOf(b));
  const placed = new Map<string, Spot>();
  for (let round = 0; round < ROUNDS; round++) {
    for (const tag of order) {
      const others = [...placed.values()].filter(({ key }) => key !== tag.key);
      placed.set(tag.key, bestSpot(tag, [...others, ...free], area));
    }
  }
  return loose.map(({ key }) => {
    const { x, y, foot } = placed.get(key)!;
    return { key, x, y, foot };
  });
}

function bestSpot(tag: LooseTag, others: readonly KeptFree[], area: Area): Spot {
  const { key, from, to, width } = tag;
  const length = lengthOf(tag);
  const across: Point = length < 1 ? [0, 1] : [-(to[1] - from[1]) / length, (to[0] - from[0]) / length];
  // Beside an upright line a tag needs its width, beside a level one its height.
  const reach = Math.abs(across[0]) * (width / 2 / APART + 0.5) + Math.abs(across[1]);
  let best: Spot | null = null;
  let least = Number.POSITIVE_INFINITY;
  for (const beside of BESIDE) {
    for (let i = 0; i < TRIES; i++) {
      const t = KEEP_IN + ((1 - 2 * KEEP_IN) * i) / (TRIES - 1);
      const foot: Point = [from[0] + (to[0] - from[0]) * t, from[1] + (to[1] - from[1]) * t];
      const x = within(foot[0] + across[0] * beside * reach, width / 2, area.width - width / 2);
      const y = within(foot[1] + across[1] * beside * reach, TOUCH / 2, area.height - TOUCH / 2);
      let cost = BESIDE_COST * Math.hypot(x - foot[0], y - foot[1]) + AWAY_COST * Math.abs(t - tag.best);
      for (const other of others) cost += overlap(x, y, width, other);
      if (cost < least) {
        least = cost;
        best = { key, x, y, foot, width, height: APART };
      }
    }
  }
  return best!;
}

const lengthOf = ({ from, to }: LooseTag): number => Math.hypot(to[0] - from[0], to[1] - from[1]);

const within = (value: number, least: number, most: number): number => Math.max(least, Math.min(most, value));

/** Area that a tag shares with another, or with what is to be kept free, px². */
function overlap(x: number, y: number, width: number, other: KeptFree): number {
  const across = (width + other.width) / 2 + 3 - Math.abs(x - other.x);
  const up = (APART + other.height) / 2 - Math.abs(y - other.y);
  return across > 0 && up > 0 ? across * up : 0;
}
