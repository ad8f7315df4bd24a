import type { CutEdge } from '../adjust';
import type { Alcove } from '../alcove';
import { type Job, WALLS } from '../job-file';
import { type EdgeName, panelEdges } from '../panel';

/** The cut edges at the trade's top, middle and bottom, with the derivatives of their positions. */
export function cutEdges(alcove: Alcove, job: Job): CutEdge[] {
  const foot = alcove.rim.value(0, 0);
  const heights = [foot, (foot + job.fit.top) / 2, job.fit.top];
  return WALLS.flatMap((panel) => {
    const { lower, upper, bottom } = panelEdges(alcove, job, panel);
    const low = lower.at(0).value;
    const high = upper.at(0).value;
    const places: { edge: EdgeName; along: number; gradient: Float64Array | null }[] = [
      ...heights.flatMap((along) => [lower, upper].map(({ name, at }) => ({ edge: name, along, ...at(along) }))),
      ...[low, (low + high) / 2, high].map((along) => ({ edge: 'bottom' as const, along, ...bottom(along) })),
    ];
    return places.flatMap(({ edge, along, gradient }) =>
      gradient === null ? [] : [{ place: { panel, edge, along }, gradient }],
    );
  });
}
