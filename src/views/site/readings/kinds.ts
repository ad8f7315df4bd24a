import type { ReadingKind } from '../../../core';

interface KindWords {
  name: string;
  how: string;
}

/** What each kind of reading is called and how it is taken, in the order in which they are listed. */
export const kindWords: Record<ReadingKind, KindWords> = {
  'tape-to-corner': {
    name: 'Plumb line to corner',
    how: 'Level tape along the back wall, from the plumb line to the inside corner.',
  },
  'tape-to-rim': { name: 'Level line to rim', how: 'Tape straight down the wall, from the level line to the rim.' },
  span: { name: 'Wall to wall', how: 'Level tape from the left wall to the right wall.' },
  plumb: {
    name: 'Gaps to a hung line',
    how: 'Hang a plumb line in front of the wall and read the gap to the wall at two or more heights.',
  },
  straightedge: {
    name: 'Straightedge',
    how: 'Straightedge between two places on a wall: how far the wall lies behind its middle.',
  },
  square: {
    name: 'Square check',
    how: 'Mark one leg on the back wall and one on the side wall, then tape across between the marks.',
  },
  angle: { name: 'Inside angle', how: 'Angle finder in the corner, between the back wall and the side wall.' },
  diagonal: { name: 'Diagonal', how: 'Tape across the back wall from one inside corner to the other.' },
  depth: {
    name: 'Corner to front edge',
    how: 'Level tape along a side wall, from the inside corner to the front edge.',
  },
};

export const kinds = Object.keys(kindWords) as ReadingKind[];
