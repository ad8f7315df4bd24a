import type { Reading, Unread } from '../../../src/core';
import { exactValue, gapFromLine, noisy, type TrueAlcove, wallAt } from '../../simulate';

/** How far in front of the wall a plumb line is hung, mm. */
const HUNG = 50;

/** The readings as this alcove would show them to a perfect tape. */
function takenExactly(alcove: TrueAlcove, places: readonly Unread[]): Reading[] {
  return places.map((place, i): Reading => {
    const id = `${place.kind} ${i + 1}`;
    if (place.kind !== 'plumb') {
      const named = { ...place, id };
      return { ...named, value: exactValue(alcove, named) } as Reading;
    }
    const line = wallAt(alcove, place.wall, place.at, 0) + (place.wall === 'right' ? -HUNG : HUNG);
    const gaps = place.gaps.map(({ height }) => ({
      height,
      value: gapFromLine(alcove, place.wall, place.at, height, line),
    }));
    return { ...place, id, gaps };
  });
}

/** The readings with errors of design section 3. */
export const taken = (alcove: TrueAlcove, places: readonly Unread[], seed: number): Reading[] =>
  noisy(takenExactly(alcove, places), seed);
