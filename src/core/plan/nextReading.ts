import type { Adjustment, CutEdge, NextReading } from '../adjust';
import type { Job, Reading } from '../job-file';
import { candidateReadings, USUAL } from './candidates';
import { variancesAfter, watch } from './knowledge';
import { rowsOf } from './rows';
import { unread } from './unread';

/** A candidate less useful than this share of what stands is not worth taking. */
const WORTHWHILE = 0.99;

/**
 * The reading that lowers the largest cut-edge standard deviation most. Early in a survey no single reading lowers the
 * largest; then the one that lowers the sum of the variances most. Null where none helps.
 * @param edges what `cutEdges` gives for this adjustment
 */
export function nextReading(
  { alcove, covariance, supposition }: Adjustment,
  job: Job,
  edges: readonly CutEdge[],
): NextReading | null {
  const knowledge = covariance.to2DArray().map((line) => Float64Array.from(line));
  const watched = watch(
    knowledge,
    edges.map(({ gradient }) => gradient),
  );
  const now = measures(watched.variances);
  const trials = candidateReadings(alcove, job, USUAL).map((reading) => {
    const rows = rowsOf(reading, alcove, job.instruments).map((row) => row.map((entry) => entry / supposition.scale));
    return { reading, ...measures(variancesAfter(knowledge, watched, rows)) };
  });
  for (const measure of ['largest', 'total'] as const) {
    const best = trials.reduce((a, b) => (b[measure] < a[measure] ? b : a));
    if (best[measure] < WORTHWHILE ** 2 * now[measure]) {
      return described(best.reading, Math.sqrt(now.largest), Math.sqrt(best.largest));
    }
  }
  return null;
}

const measures = (variances: Float64Array) => ({
  largest: variances.reduce((most, each) => Math.max(most, each), 0),
  total: variances.reduce((sum, each) => sum + each, 0),
});

function described(reading: Reading, sdBefore: number, sdAfter: number): NextReading {
  const place = reading.kind === 'straightedge' || reading.kind === 'diagonal' ? reading.from : reading;
  return {
    reading: unread(reading),
    kind: reading.kind,
    wall: 'wall' in reading ? reading.wall : null,
    side: 'side' in reading ? reading.side : reading.kind === 'diagonal' ? reading.from.side : null,
    height: 'height' in place ? place.height : 0,
    at: 'at' in place ? place.at : null,
    sdBefore,
    sdAfter,
  };
}
