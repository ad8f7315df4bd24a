import { towardsRoom } from '../alcove';
import { heightOf, planeThrough, type Supports, supportsOn } from '../contact';
import { gridOver, type Region } from '../flatten';
import type { WallName } from '../job-file';
import type { Surface } from '../surface';

/** A wall's height field turned so that growing means towards the room. */
export const intoRoom =
  (surface: Pick<Surface, 'value'>, wall: WallName) =>
  (u: number, v: number): number =>
    towardsRoom(wall) * surface.value(u, v);

const STEPS = 12;

const LEANS = [
  [1, -1],
  [1, 1],
  [-1, -1],
  [-1, 1],
] as const;

/**
 * The three of the wall's high points that a rigid sheet rests on: its upper hull's facet over the sheet's centre. Where
 * it could rock, the way that leaves least room behind it, in the sense of summed squares.
 */
export function restingPoints(height: (u: number, v: number) => number, region: Region): Supports {
  const middle = { u: nearMiddle(region.u), v: nearMiddle(region.v) };
  const places = [...gridOver(region, STEPS), ...gridOver(middle, 2)];
  const known = new Map(places.map(([u, v]) => [`${u} ${v}`, height(u, v)]));
  const sampled = (u: number, v: number): number => known.get(`${u} ${v}`) ?? height(u, v);
  const ways = LEANS.map((lean) => supportsOn(sampled, region, places, lean));
  const room = (supports: Supports): number => {
    const plane = planeThrough(supports);
    return places.reduce((sum, [u, v]) => sum + (heightOf(plane, u, v) - sampled(u, v)) ** 2, 0);
  };
  return ways.reduce((best, way) => {
    const [less, tie] = [room(best) - room(way), 1e-6 * (1 + room(best))];
    // On an even hump both ways are alike: the one that leans back, so that a mirrored wall gives the mirrored sheet.
    const leansBack = planeThrough(way).slopeV < planeThrough(best).slopeV - 1e-12;
    return less > tie || (less > -tie && leansBack) ? way : best;
  });
}

/** A sheet on a hump touches it in one place, so the wall is sampled closely about the sheet's middle. */
const nearMiddle = ([from, to]: [number, number]): [number, number] => [
  from + 0.499 * (to - from),
  from + 0.501 * (to - from),
];

/**
 * The two places on which a plane rests that stays plumb: the lowest over the sheet's middle that no place stands proud
 * of, by trial of all pairs of upright lines.
 */
export function plumbPoints(height: (u: number, v: number) => number, region: Region): [number, number][] {
  const columns = [...steps(region.u, 2 * STEPS), ...nearMiddle(region.u)];
  const tops = columns.map((u) =>
    steps(region.v, 2 * STEPS)
      .map((v) => ({ u, v, h: height(u, v) }))
      .reduce((top, place) => (place.h > top.h ? place : top)),
  );
  const middle = region.u[0] + 0.50013 * (region.u[1] - region.u[0]);
  const at = (a: (typeof tops)[number], b: (typeof tops)[number], u: number): number =>
    a.h + ((b.h - a.h) * (u - a.u)) / (b.u - a.u);
  // The line over the middle through two tops that carries all others is the highest of those that pass there.
  let best: [(typeof tops)[number], (typeof tops)[number]] | null = null;
  for (const low of tops) {
    for (const high of tops) {
      if (low.u >= middle || high.u <= middle) continue;
      if (best === null || at(low, high, middle) > at(...best, middle)) best = [low, high];
    }
  }
  return best!.map(({ u, v }) => [u, v]);
}

const steps = ([from, to]: [number, number], count: number): number[] =>
  Array.from({ length: count + 1 }, (_, k) => from + ((to - from) * k) / count);
