import { Polyline } from '../Polyline';
import type { DrawnLean } from './geometry';

const PLUMB = '#1f4fa3';
const GAP = '#a61b1b';

/** Plumb lines before the walls, dashed, and the gaps between them and the walls. */
export function Leans({ leans }: { leans: readonly DrawnLean[] }) {
  return leans.flatMap(({ key, line, gap }) => [
    <Polyline key={`${key} line`} points={line} colour={PLUMB} width={2} dashed />,
    <Polyline key={`${key} gap`} points={gap} colour={GAP} width={5} />,
  ]);
}
