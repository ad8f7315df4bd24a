import type { Job } from '../job-file';
import { type Blunder, given, Z_95 } from '../reliability';
import { recogniseSlip } from '../slip';
import type { Adjustment } from './adjust';
import { largestMove, product, type Response } from './cutEdgeMoves';
import type { LeftOut, Suspect } from './report';

/** What a reading may differ by from where it fits and still have been read right, mm or degrees. */
const EXCHANGE_SLACK = 1.5;

/** The readings that look wrong, strongest first, with what else would explain each and what leaving it out would do. */
export function suspectsOf(adjustment: Adjustment, job: Job, responses: readonly Response[]): Suspect[] {
  const { search } = adjustment.examination;
  const suspects = search.blunders.flatMap((blunder) => suspectFrom(adjustment, job, blunder, responses) ?? []);
  return suspects.map((suspect) => exchangedWithAnother(suspect, suspects) ?? suspect);
}

function suspectFrom(
  adjustment: Adjustment,
  job: Job,
  blunder: Blunder,
  responses: readonly Response[],
): Suspect | null {
  const { observations, model, supposition, examination } = adjustment;
  const candidates = [blunder.row, ...blunder.alternatives].map((row) => examination.rows[row]!);
  // A prior that fits worst is named through the reading that could stand in for it; where none could, it has let go.
  const named = candidates.find((row) => 'observation' in row);
  if (named === undefined || !('observation' in named)) return null;
  const { id, kind, observed, sd: instrumentSd, reading } = observations[named.observation]!;
  const sd = instrumentSd * supposition.scale;
  const error = errorOf(adjustment, blunder, named.observation);
  const others = candidates.filter((row) => row !== named);
  const fits = observed - error.value * sd;
  return {
    id,
    kind,
    observed,
    w: blunder.statistic,
    fits,
    fitsSd: sd * Math.sqrt(Math.max(0, error.sd ** 2 - 1)),
    located: others.length === 0,
    alternatives: others.flatMap((row) => ('observation' in row ? [observations[row.observation]!.id] : [])),
    orShape: others.flatMap((row) => ('parameter' in row ? [model.parameters[row.parameter]!.label] : [])),
    slip: recogniseSlip({ kind, observed, fits, sd: sd * error.sd, display: job.display }),
    ifOff: leftOut(adjustment, job, reading, responses),
  };
}

/** Error of the named reading in sigmas, with the search's other suspects left out. */
function errorOf(
  { solution, rowOf, examination: { search } }: Adjustment,
  blunder: Blunder,
  observation: number,
): { value: number; sd: number } {
  const row = rowOf[observation]!;
  if (row === blunder.row) return { value: blunder.error, sd: blunder.errorSd };
  const others = search.blunders.filter((other) => other !== blunder).map((other) => other.row);
  const all = given(solution, [row, ...others.filter((other) => other !== row)]);
  return all?.errors[0] ?? { value: 0, sd: 1 };
}

/** What switching a whole reading off would do, from the block of its residuals (linear; Cook and Weisberg 1982). */
function leftOut(
  { observations, rowOf, solution }: Adjustment,
  job: Job,
  reading: number,
  responses: readonly Response[],
): LeftOut | null {
  const rows = rowOf.flatMap((row, i) => (row !== null && observations[i]!.reading === reading ? [row] : []));
  // The gaps of a plumb reading share a standoff: once all but one are out, the last says nothing more.
  const out = rows.length > 1 ? rows.slice(1) : rows;
  const left = given(solution, out);
  if (left === null) return null;
  const jacobian = out.map((row) => solution.jacobian[row]!);
  const move = largestMove(
    responses,
    jacobian,
    left.errors.map(({ value }) => -value),
  );
  if (move === null) return null;
  const variances = responses.map(({ influence, variance }) => {
    const seen = jacobian.map((row) => product(influence, row));
    const more = left.errorCovariance.map((line) => product(line, seen));
    return { before: variance, after: variance + product(seen, more) };
  });
  return {
    reading: job.readings[reading]!.id,
    move,
    worst95Before: Z_95 * Math.sqrt(Math.max(...variances.map(({ before }) => before))),
    worst95After: Z_95 * Math.sqrt(Math.max(...variances.map(({ after }) => after))),
  };
}

/** Two suspects of one kind whose values fit each other's place were written down in each other's line. */
function exchangedWithAnother(suspect: Suspect, suspects: readonly Suspect[]): Suspect | null {
  const near = (value: number, { fits, fitsSd }: Suspect): boolean =>
    Math.abs(value - fits) < 3 * fitsSd + EXCHANGE_SLACK;
  const other = suspects.find(
    (each) =>
      each !== suspect && each.kind === suspect.kind && near(suspect.observed, each) && near(each.observed, suspect),
  );
  if (other === undefined) return null;
  return {
    ...suspect,
    slip: {
      kind: 'exchanged',
      words: `written in each other's line: this one and ${other.id}`,
      likely: other.observed,
    },
  };
}
