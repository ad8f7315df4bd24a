import { useMemo } from 'react';
import { Polyline } from '../Polyline';
import type { Dimension } from './geometry';

const COLOUR = '#14343a';
const TICK = 26;

/** Dimension lines, a tick at either end. */
export function Dimensions({ dimensions }: { dimensions: readonly Dimension[] }) {
  const lines = useMemo(
    () =>
      dimensions.flatMap(({ key, from, to }) => {
        const upright = Math.abs(to[1] - from[1]) > Math.abs(to[0] - from[0]) + Math.abs(to[2] - from[2]);
        const tick = ([x, y, z]: Dimension['from']) =>
          upright
            ? ([
                [x - TICK, y, z],
                [x + TICK, y, z],
              ] as const)
            : ([
                [x, y - TICK, z],
                [x, y + TICK, z],
              ] as const);
        return [
          { key, points: [from, to] },
          { key: `${key} from`, points: tick(from) },
          { key: `${key} to`, points: tick(to) },
        ];
      }),
    [dimensions],
  );
  return lines.map(({ key, points }) => <Polyline key={key} points={points} colour={COLOUR} width={2} />);
}
