import { heightOf, restOn } from '../contact';
import { gridOver, type Region } from '../flatten';
import type { WallName } from '../job-file';
import type { Surface } from '../surface';

/** A wall's height field turned so that growing means towards the room. */
export const intoRoom = (surface: Surface, wall: WallName) => {
  const sign = wall === 'right' ? -1 : 1;
  return (u: number, v: number): number => sign * surface.value(u, v);
};

const STEPS = 12;

/** Largest distance, mm, between a wall and a rigid sheet pressed against it. */
export function hollowBehindRigidSheet(height: (u: number, v: number) => number, region: Region): number {
  const behind = hollowAt(height, region);
  return Math.max(...gridOver(region, STEPS).map(([u, v]) => behind(u, v)));
}

/**
 * Distance, mm, between a wall and a rigid sheet pressed against it, place by place: the sheet rests on three of the
 * wall's high points, the facet of its upper hull that lies over the sheet's centre.
 */
export function hollowAt(height: (u: number, v: number) => number, region: Region): (u: number, v: number) => number {
  const middle = { u: nearMiddle(region.u), v: nearMiddle(region.v) };
  const plane = restOn(height, region, [...gridOver(region, STEPS), ...gridOver(middle, 2)]);
  return (u, v) => Math.max(0, heightOf(plane, u, v) - height(u, v));
}

/** A sheet on a hump touches it in one place, so the wall is sampled closely about the sheet's middle. */
const nearMiddle = ([from, to]: [number, number]): [number, number] => [
  from + 0.499 * (to - from),
  from + 0.501 * (to - from),
];
