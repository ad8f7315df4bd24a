import type { Fixture } from '../../../core';

/** Ends of one grab bar lie this far apart, mm. */
const NEAREST = 150;
const FARTHEST = 1300;

/** Grab bars by their fixtures: two ends on one wall, as listed one after the other; an end left over stands alone. */
export function grabBars(fixtures: readonly Fixture[]): (readonly [Fixture, Fixture] | readonly [Fixture])[] {
  const ends = fixtures.filter(({ kind }) => kind === 'grab-bar');
  const bars: (readonly [Fixture, Fixture] | readonly [Fixture])[] = [];
  for (let i = 0; i < ends.length; i++) {
    const [end, next] = [ends[i]!, ends[i + 1]];
    const apart =
      next === undefined || next.wall !== end.wall
        ? 0
        : Math.hypot(next.aboveRim - end.aboveRim, along(next) - along(end));
    if (next !== undefined && apart >= NEAREST && apart <= FARTHEST) {
      bars.push([end, next]);
      i++;
    } else bars.push([end]);
  }
  return bars;
}

const along = (fixture: Fixture): number => (fixture.wall === 'back' ? fixture.fromPlumbLine : fixture.fromBack);
