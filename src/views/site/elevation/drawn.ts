import type { Side, WallName } from '../../../core';
import type { DraftFixture } from '../../../job';
import type { SurveyPlace, Where } from '../survey';
import type { Frame } from './frame';

/** A place on a wall, mm; `at` is x on the back wall and the distance out from the back on a side wall. */
export interface WallPlace {
  wall: WallName;
  at: number;
  height: number;
}

/** How a place is drawn. */
export interface Drawn {
  /** `air`: a tape that lies on no wall between its ends */
  shape: 'tape' | 'air' | 'column' | 'bar' | 'corner' | 'hole';
  wall: WallName;
  from: WallPlace;
  to: WallPlace;
  /** where gaps are read */
  ticks: WallPlace[];
  /** radius of a hole, mm */
  radius: number;
}

/** Half the length of the mark of an inside angle along each wall, mm. */
const ANGLE_ARM = 120;

/** Where a place lies on the walls; null while that is not known. */
export function drawnPlace(place: SurveyPlace, frame: Frame): Drawn | null {
  return place.list === 'fixtures' ? drawnFixture(place.where, frame) : drawnReading(place.where, frame);
}

const line = (shape: Drawn['shape'], wall: WallName, from: WallPlace, to: WallPlace): Drawn => ({
  shape,
  wall,
  from,
  to,
  ticks: [],
  radius: 0,
});

function drawnReading(where: Where, frame: Frame): Drawn | null {
  const cornerAt = (side: Side, height: number): WallPlace => ({
    wall: 'back',
    at: frame.corner[side](height),
    height,
  });
  switch (where.kind) {
    case 'tape-to-corner': {
      const { side, height } = where;
      if (side === undefined || height === undefined) return null;
      return line('tape', 'back', { wall: 'back', at: 0, height }, cornerAt(side, height));
    }
    case 'tape-to-rim': {
      const { wall, at } = where;
      if (wall === undefined || at === undefined) return null;
      return line('tape', wall, { wall, at, height: 0 }, { wall, at, height: frame.rim(wall, at) });
    }
    case 'span': {
      const { height, at } = where;
      if (height === undefined || at === undefined) return null;
      return line('air', 'back', { wall: 'left', at, height }, { wall: 'right', at, height });
    }
    case 'plumb': {
      const { wall, at } = where;
      if (wall === undefined || at === undefined) return null;
      const ticks = (where.gaps ?? []).flatMap(({ height }) => (height === undefined ? [] : { wall, at, height }));
      if (ticks.length === 0) return null;
      const heights = ticks.map(({ height }) => height);
      const end = (height: number): WallPlace => ({ wall, at, height });
      return { ...line('column', wall, end(Math.max(...heights)), end(Math.min(...heights))), ticks };
    }
    case 'straightedge': {
      const { wall, from, to } = where;
      if (wall === undefined || from?.at === undefined || from.height === undefined) return null;
      if (to?.at === undefined || to.height === undefined) return null;
      return line('bar', wall, { wall, at: from.at, height: from.height }, { wall, at: to.at, height: to.height });
    }
    case 'square': {
      const { side, height, alongBack, alongSide } = where;
      if (side === undefined || height === undefined || alongBack === undefined || alongSide === undefined) return null;
      return acrossCorner(cornerAt(side, height), side, alongBack, alongSide);
    }
    case 'angle': {
      const { side, height } = where;
      if (side === undefined || height === undefined) return null;
      return acrossCorner(cornerAt(side, height), side, ANGLE_ARM, ANGLE_ARM);
    }
    case 'diagonal': {
      const { from, to } = where;
      if (from?.side === undefined || from.height === undefined) return null;
      if (to?.side === undefined || to.height === undefined) return null;
      return line('tape', 'back', cornerAt(from.side, from.height), cornerAt(to.side, to.height));
    }
    case 'depth': {
      const { wall, height } = where;
      if (wall === undefined || height === undefined) return null;
      return line('tape', wall, { wall, at: 0, height }, { wall, at: frame.front[wall](height), height });
    }
  }
}

/** From the mark on the back wall to the one on the side wall. */
function acrossCorner(corner: WallPlace, side: Side, alongBack: number, alongSide: number): Drawn {
  const inward = side === 'left' ? 1 : -1;
  const mark = { ...corner, at: corner.at + inward * alongBack };
  return line('corner', 'back', mark, { wall: side, at: alongSide, height: corner.height });
}

function drawnFixture(fixture: DraftFixture, frame: Frame): Drawn | null {
  const { wall, aboveRim } = fixture;
  const at = fixture.wall === 'back' ? fixture.fromPlumbLine : fixture.fromBack;
  if (at === undefined || aboveRim === undefined) return null;
  const centre = { wall, at, height: frame.rim(wall, at) + aboveRim };
  return { ...line('hole', wall, centre, centre), radius: (fixture.hole ?? 0) / 2 };
}
