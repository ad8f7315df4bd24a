import type { Reading, Side, WallName } from '../../src/core/job-file';
import { exactValue, gapFromLine, type Unread } from './exactValue';
import { cornerPoint } from './points';
import { randomFrom } from './random';
import { frontAt, rimAt, type TrueAlcove, wallAt } from './trueAlcove';

export interface PlanOptions {
  /** height of the panels' top above the level line, mm */
  top?: number;
  /** for the plumb lines' distances from the wall */
  seed?: number;
  /** stations and heights lie on multiples of this, mm */
  grid?: number;
}

const SIDES: Side[] = ['left', 'right'];
const WALLS: WallName[] = ['back', 'left', 'right'];

/**
 * A thorough survey with exact values: enough that every coefficient follows without priors, with some checks.
 */
export function fullPlan(alcove: TrueAlcove, { top = 980, seed = 1, grid = 10 }: PlanOptions = {}): Reading[] {
  const random = randomFrom(seed);
  const onGrid = (value: number): number => Number((grid * Math.round(value / grid)).toFixed(6));
  const low = onGrid(rimAt(alcove, 0, 0) + 80);
  const high = onGrid(top - 60);
  const half = onGrid(Math.min(-cornerPoint(alcove, 'left', 0)[0], cornerPoint(alcove, 'right', 0)[0]) - 100);
  const out = onGrid(Math.min(frontAt(alcove, 'left', 0), frontAt(alcove, 'right', 0)) - 60);
  const near = onGrid(60);
  const stations = (wall: WallName): number[] =>
    wall === 'back' ? [-half, 0, half] : [near, onGrid((near + out) / 2), out];
  const heights = (count: number): number[] =>
    Array.from({ length: count }, (_, i) => onGrid(low + ((high - low) * i) / (count - 1)));

  const readings: Reading[] = [];
  const take = (
    id: string,
    unread: Unread extends infer U ? (U extends Unread ? Omit<U, 'id'> : never) : never,
  ): void => {
    const named = { id, ...unread } as Unread;
    readings.push({ ...named, value: exactValue(alcove, named) } as Reading);
  };

  for (const side of SIDES) {
    heights(5).forEach((height, i) => take(`corner-${side}-${i + 1}`, { kind: 'tape-to-corner', side, height }));
  }
  for (const wall of WALLS) {
    stations(wall).forEach((at, i) => take(`rim-${wall}-${i + 1}`, { kind: 'tape-to-rim', wall, at }));
  }
  for (const wall of WALLS) {
    stations(wall).forEach((at, i) => {
      const hang = random.between(25, 80);
      const line = wallAt(alcove, wall, at, high) + (wall === 'right' ? -hang : hang);
      const gaps = heights(4).map((height) => ({ height, value: gapFromLine(alcove, wall, at, height, line) }));
      readings.push({ id: `plumb-${wall}-${i + 1}`, kind: 'plumb', wall, at, gaps });
    });
  }
  heights(3).forEach((height, i) => {
    take(`span-${i + 1}-out`, { kind: 'span', height, at: out });
    if (i !== 1) take(`span-${i + 1}-in`, { kind: 'span', height, at: near });
  });
  for (const wall of WALLS) {
    const [first, middle, last] = stations(wall) as [number, number, number];
    [low, high].forEach((height, i) =>
      take(`straight-${wall}-level-${i + 1}`, {
        kind: 'straightedge',
        wall,
        from: { at: first, height },
        to: { at: last, height },
      }),
    );
    take(`straight-${wall}-upright`, {
      kind: 'straightedge',
      wall,
      from: { at: middle, height: low },
      to: { at: middle, height: high },
    });
  }
  for (const side of SIDES) {
    [low, high].forEach((height, i) =>
      take(`square-${side}-${i + 1}`, {
        kind: 'square',
        side,
        height,
        alongBack: onGrid(600),
        alongSide: onGrid(Math.min(out - 20, 640)),
      }),
    );
    take(`angle-${side}`, { kind: 'angle', side, height: 0 });
    heights(3).forEach((height, i) => take(`depth-${side}-${i + 1}`, { kind: 'depth', wall: side, height }));
    const other = side === 'left' ? 'right' : 'left';
    take(`diagonal-${side}`, { kind: 'diagonal', from: { side, height: low }, to: { side: other, height: high } });
  }
  return readings;
}
