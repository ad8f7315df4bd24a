import { adjust } from '../adjust';
import type { Job } from '../job-file';
import { MM_PER_INCH } from '../length';
import { Z_95 } from '../reliability';
import { candidateReadings, FINE } from './candidates';
import { type Candidate, chooseReadings } from './chooseReadings';
import { cutEdges } from './cutEdges';
import { type Knowledge, updated, watch } from './knowledge';
import { rowsOf } from './rows';
import { type Unread, unread } from './unread';
import { walkingOrder } from './walkingOrder';

/** A reading of a plan. */
export interface PlannedReading {
  /** 1, 2, … in the order that a person would walk */
  step: number;
  reading: Unread;
  /** 1: enough for a first drawing; 2: brings every cut edge within the target */
  round: 1 | 2;
  /** 95 % half-width of the least certain cut edge before and after it, mm */
  before: number;
  after: number;
  /** share of the cut edges' ends and middles that keep within the target after it, 0 … 1 */
  settled: number;
}

export interface PlanOptions {
  /** 95 % half-width that every cut edge is to keep within, mm; 1/32 in unless given */
  target?: number;
  /** start from the readings that the job has, so that the plan holds what is still to be taken */
  onTop?: boolean;
}

/** The first round brings every cut edge within this many times the target. */
const FIRST_ROUND = 4;
/** A square check needs two marks and one reading. */
const SQUARE_EFFORT = 3;

/**
 * A short plan from nothing to ± `target` (95 %) at every cut edge of this alcove, in two rounds, each in the order a
 * person would walk: after the first the alcove can be drawn and gross misreadings show. The alcove's size and shape are
 * taken from the readings that the job has, or where it has none from what it says; the plan itself starts from no
 * reading, unless it is to go on top of them. The last one's `after` tells whether the target is reached.
 */
export function surveyPlan(job: Job, { target = MM_PER_INCH / 32, onTop = false }: PlanOptions = {}): PlannedReading[] {
  const empty = adjust({ ...job, readings: [] });
  const p = empty.model.parameters.length;
  const nothing: Knowledge = empty.covariance.to2DArray().map((line) => Float64Array.from(line));
  // Scans alone give the shape, in unknowns that readings would change.
  const { alcove } = empty.scans.length > 0 ? empty : adjust(job);
  // Were a wall taken for uneven already, its spline comes after the parameters that an empty survey has.
  const shared = (gradient: Float64Array): Float64Array => gradient.subarray(0, p);
  const gradients = cutEdges(alcove, job).map(({ gradient }) => shared(gradient));
  const candidates = candidateReadings(alcove, job, FINE).map((reading): Candidate => {
    const effort = reading.kind === 'plumb' ? reading.gaps.length : reading.kind === 'square' ? SQUARE_EFFORT : 1;
    return { reading, rows: rowsOf(reading, alcove, job.instruments).map(shared), effort };
  });
  const taken = onTop ? job.readings.filter(({ off }) => !off) : [];
  const start = taken.reduce(
    (knowledge, reading) => updated(knowledge, rowsOf(reading, alcove, job.instruments).map(shared)),
    nothing,
  );
  const goal = (width: number) => ({ gradients, variance: (width / Z_95) ** 2 });
  const chosen = chooseReadings(start, candidates, goal(target));
  const first = new Set(chooseReadings(start, [...new Set(chosen)], goal(FIRST_ROUND * target)));
  const second = chosen.filter((candidate, i) => !first.has(candidate) || chosen.indexOf(candidate) !== i);

  const plan: PlannedReading[] = [];
  let knowledge = start;
  let before = Math.max(...halfWidthsOf(knowledge, gradients));
  for (const [round, readings] of [
    [1, [...first]],
    [2, second],
  ] as const) {
    for (const { reading, rows } of walkingOrder(readings)) {
      knowledge = updated(knowledge, rows);
      const halfWidths = halfWidthsOf(knowledge, gradients);
      const after = Math.max(...halfWidths);
      const settled = halfWidths.filter((each) => each <= target).length / halfWidths.length;
      plan.push({ step: plan.length + 1, reading: unread(reading), round, before, after, settled });
      before = after;
    }
  }
  return plan;
}

const halfWidthsOf = (knowledge: Knowledge, gradients: readonly Float64Array[]): number[] =>
  Array.from(watch(knowledge, gradients).variances, (variance) => Z_95 * Math.sqrt(variance));
