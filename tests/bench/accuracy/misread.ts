import type { Reading } from '../../../src/core';
import { type Random, withBlunder } from '../../simulate';

export interface Misread {
  readings: Reading[];
  /** id of the observation, `r/k` for gap k of a plumb reading */
  id: string;
  /** mm, degrees for an angle */
  size: number;
}

const INCH = 25.4;
/** What people misread by: on a tape, on a rule; mm. */
const TAPE = [INCH, INCH, INCH / 2, 12 * INCH, 100, 10 * (INCH / 16)];
const RULE = [INCH / 2, INCH, 10];

/** The survey with one reading, gap by gap the same chance, misread by a slip that people make. */
export function misreadOne(readings: readonly Reading[], random: Random): Misread {
  const ids = readings.flatMap((reading) =>
    reading.kind === 'plumb' ? reading.gaps.map((_, k) => `${reading.id}/${k}`) : [reading.id],
  );
  const id = ids[Math.floor(random.between(0, ids.length))]!;
  const { kind } = readings.find((reading) => reading.id === id || id.startsWith(`${reading.id}/`))!;
  const sizes = kind === 'angle' ? [1, 2] : kind === 'plumb' || kind === 'straightedge' ? RULE : TAPE;
  const size = sizes[Math.floor(random.between(0, sizes.length))]! * (random.between(0, 1) < 0.5 ? -1 : 1);
  return { readings: withBlunder([...readings], id, size), id, size };
}
