import { colours } from './colours';
import type { ControlLine } from './geometry';
import { Polyline } from './Polyline';

/** Level line (unbroken) and plumb line (broken), as drawn on the walls. */
export function ControlLines({ lines }: { lines: readonly ControlLine[] }) {
  return lines.map(({ name, points }) => (
    <Polyline
      key={name}
      points={points}
      colour={colours.controlLine}
      width={2.5}
      dashed={name === 'plumb line'}
      throughWalls
    />
  ));
}
