import type { Alcove } from '../alcove';
import type { Job } from '../job-file';
import { type PanelName, panelEdges } from '../panel';

/** Derivatives of the cut edges' positions with respect to the parameters, at the trade's top, middle and bottom. */
export function cutEdgeGradients(alcove: Alcove, job: Job): Float64Array[] {
  const bottom = alcove.rim.value(0, 0);
  const heights = [bottom, (bottom + job.fit.top) / 2, job.fit.top];
  return (['back', 'left', 'right'] as PanelName[]).flatMap((name) => {
    const edges = panelEdges(alcove, job, name);
    const low = edges.lower.at(0).value;
    const high = edges.upper.at(0).value;
    return [
      ...heights.flatMap((height) => [edges.lower.at(height), edges.upper.at(height)]),
      ...[low, (low + high) / 2, high].map((u) => edges.bottom(u)),
    ].flatMap(({ gradient }) => (gradient === null ? [] : [gradient]));
  });
}
