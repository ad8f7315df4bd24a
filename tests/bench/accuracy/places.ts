import type { Job, Unread, WallName } from '../../../src/core';
import { cornerPoint, frontAt, rimAt, type TrueAlcove } from '../../simulate';

/** How near the rim, a corner or an edge a tape is held, mm. */
const CLEAR = 40;

/** How far an alcove reaches from the origin. */
export interface Reach {
  foot: number;
  top: number;
  left: number;
  right: number;
  out: number;
}

export function reachOf(alcove: TrueAlcove, { fit, rim }: Pick<Job, 'fit' | 'rim'>): Reach {
  return {
    foot: rimAt(alcove, 0, 0) + CLEAR,
    top: fit.top - CLEAR,
    left: cornerPoint(alcove, 'left', 0)[0] + CLEAR,
    right: cornerPoint(alcove, 'right', 0)[0] - CLEAR,
    out: Math.min(frontAt(alcove, 'left', 0), frontAt(alcove, 'right', 0), rim.width) - CLEAR,
  };
}

/** An end of a straightedge. */
interface End {
  at: number;
  height: number;
}

/** Places of a plan made for one alcove, moved to where they would be taken in another. */
export const fitted = (places: readonly Unread[], from: Reach, to: Reach): Unread[] =>
  places.map((place) => moved(place, from, to));

function moved(place: Unread, from: Reach, to: Reach): Unread {
  const height = (y: number): number => (y < 0 ? (y * to.foot) / from.foot : (y * to.top) / from.top);
  const station = (wall: WallName, at: number): number => {
    if (wall !== 'back') return (at * to.out) / from.out;
    return at < 0 ? (at * to.left) / from.left : (at * to.right) / from.right;
  };
  switch (place.kind) {
    case 'tape-to-corner':
    case 'angle':
    case 'square':
    case 'depth':
      return { ...place, height: height(place.height) };
    case 'tape-to-rim':
      return { ...place, at: station(place.wall, place.at) };
    case 'span':
      return { ...place, height: height(place.height), at: station('left', place.at) };
    case 'plumb':
      return {
        ...place,
        at: station(place.wall, place.at),
        gaps: place.gaps.map((gap) => ({ height: height(gap.height) })),
      };
    case 'straightedge': {
      const end = (each: End): End => ({ at: station(place.wall, each.at), height: height(each.height) });
      return { ...place, from: end(place.from), to: end(place.to) };
    }
    case 'diagonal':
      return {
        ...place,
        from: { ...place.from, height: height(place.from.height) },
        to: { ...place.to, height: height(place.to.height) },
      };
  }
}
