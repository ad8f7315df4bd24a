import type { WallName } from '../../../src/core';
import { type Hump, plausibleAlcove, randomFrom, type TrueAlcove } from '../../simulate';

const WALLS: WallName[] = ['back', 'left', 'right'];

/**
 * An alcove with a hump or hollow of 1 to 4 mm over some 250 to 450 mm on each wall, which the minimum basis cannot
 * follow.
 */
export function unevenAlcove(seed: number): TrueAlcove {
  const random = randomFrom(seed + 40_000);
  const humps = WALLS.map(
    (wall): Hump => ({
      wall,
      at: wall === 'back' ? random.between(-600, 600) : random.between(100, 650),
      height: random.between(-600, 800),
      rise: random.between(1, 4) * (random.between(0, 1) < 0.5 ? -1 : 1),
      radius: random.between(250, 450),
    }),
  );
  return { ...plausibleAlcove(seed), humps };
}
