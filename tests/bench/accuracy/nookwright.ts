import { type Job, type Reading, type ReadingReport, type Suspect, Z_95 } from '../../../src/core';
import { adjust, readingReports, responsesOf, standardDeviation, suspectsOf } from '../../../src/core/adjust';
import { type PanelEdges, panelEdges } from '../../../src/core/panel';
import { cutEdges } from '../../../src/core/plan';
import { type EdgePlace, misfitsOf } from './edges';

/** What Nookwright makes of a survey. */
export interface Outcome {
  readings: ReadingReport[];
  suspects: Suspect[];
  misfits: number[];
  /** share of the edge places that the stated 95 % holds */
  covered: number;
  /** a wall got a spline; the readings were found rougher than their instruments */
  uneven: boolean;
  rough: boolean;
}

export function nookwright(job: Job, places: readonly EdgePlace[]): Outcome {
  const adjustment = adjust(job);
  const { alcove, covariance, solution, supposition } = adjustment;
  const edges = {
    back: panelEdges(alcove, job, 'back'),
    left: panelEdges(alcove, job, 'left'),
    right: panelEdges(alcove, job, 'right'),
  };
  const found = places.map(({ panel, edge, along }) => edgeOf(edges[panel], edge)(along));
  const within = found.filter(
    (dual, i) => Math.abs(dual.value - places[i]!.at) <= Z_95 * standardDeviation(dual, covariance),
  ).length;
  const responses = responsesOf(cutEdges(alcove, job), solution.cofactors);
  const suspects = suspectsOf(adjustment, job, responses);
  return {
    readings: readingReports(adjustment, suspects, responses),
    suspects,
    misfits: misfitsOf(
      places,
      found.map(({ value }) => value),
    ),
    covered: within / places.length,
    uneven: supposition.uneven.length > 0,
    rough: supposition.scale > 1,
  };
}

const edgeOf = ({ lower, upper, bottom, top }: PanelEdges, name: string) =>
  name === lower.name ? lower.at : name === upper.name ? upper.at : name === 'bottom' ? bottom : top;

/** Most times that a person goes back with the tape. */
const ROUNDS = 3;

/** Every reading that looks wrong, and those that it cannot be told from, taken again, until none does. */
export function afterAdvice(
  job: Job,
  places: readonly EdgePlace[],
  first: Outcome,
  again: (reading: Reading, round: number) => Reading,
): { outcome: Outcome; retaken: number } {
  let [current, outcome, retaken] = [job, first, 0];
  for (let round = 1; round <= ROUNDS && outcome.suspects.length > 0; round++) {
    const named = new Set(outcome.suspects.flatMap(({ id, alternatives }) => [id, ...alternatives]));
    const doubted = (reading: Reading): boolean =>
      [...named].some((id) => id === reading.id || (reading.kind === 'plumb' && id.startsWith(`${reading.id}/`)));
    retaken += current.readings.filter(doubted).length;
    current = {
      ...current,
      readings: current.readings.map((reading) => (doubted(reading) ? again(reading, round) : reading)),
    };
    outcome = nookwright(current, places);
  }
  return { outcome, retaken };
}
