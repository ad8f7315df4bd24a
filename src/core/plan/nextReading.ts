import { inverse, Matrix } from 'ml-matrix';
import type { Adjustment, NextReading } from '../adjust';
import type { Alcove } from '../alcove';
import type { Job, Reading } from '../job-file';
import { observationsOf } from '../survey';
import { candidateReadings } from './candidates';
import { cutEdgeGradients } from './cutEdgeGradients';

/** A candidate less useful than this share of what stands is not worth taking. */
const WORTHWHILE = 0.99;

/**
 * The reading that lowers the largest cut-edge standard deviation most, from the update of the covariance
 * C' = C − C Aᵀ (I + A C Aᵀ)⁻¹ A C by the candidate's whitened rows A (Sherman–Morrison–Woodbury). Early in a survey
 * no single reading lowers the largest; then the one that lowers the sum of the variances most. Null where none helps.
 */
export function nextReading({ alcove, covariance }: Adjustment, job: Job): NextReading | null {
  const edges = cutEdgeGradients(alcove, job).map((gradient) => {
    const influence = covariance.mmul(Matrix.columnVector(gradient)).to1DArray();
    return { influence, variance: dot(gradient, influence) };
  });
  const largest = Math.max(...edges.map(({ variance }) => variance));
  const total = edges.reduce((sum, { variance }) => sum + variance, 0);
  const trials = candidateReadings(alcove, job).map((reading) => {
    const rows = whitenedRows(reading, alcove, job);
    const spread = inverse(
      Matrix.eye(rows.length).add(new Matrix(rows.map((a) => rows.map((b) => bilinear(a, covariance, b))))),
    );
    const left = edges.map(({ influence, variance }) => {
      const seen = rows.map((row) => dot(row, influence));
      return Math.max(0, variance - bilinear(seen, spread, seen));
    });
    return { reading, largest: Math.max(...left), total: left.reduce((sum, each) => sum + each, 0) };
  });
  const least = (measure: 'largest' | 'total') =>
    trials.reduce((best, trial) => (trial[measure] < best[measure] ? trial : best));
  const byLargest = least('largest');
  const byTotal = least('total');
  if (byLargest.largest < WORTHWHILE ** 2 * largest)
    return describe(byLargest.reading, Math.sqrt(largest), Math.sqrt(byLargest.largest));
  if (byTotal.total < WORTHWHILE ** 2 * total)
    return describe(byTotal.reading, Math.sqrt(largest), Math.sqrt(byTotal.largest));
  return null;
}

/** Rows of a reading divided by its sigma; the gaps of a plumb reading less their mean, which eliminates the standoff. */
function whitenedRows(reading: Reading, alcove: Alcove, job: Job): Float64Array[] {
  const [probe] = observationsOf([reading], job.instruments);
  const valued = reading.kind === 'plumb' ? reading : { ...reading, value: probe!.predict(alcove).value };
  const observations = observationsOf([valued], job.instruments);
  const rows = observations.map(({ predict, sd }) => predict(alcove).gradient!.map((partial) => partial / sd));
  if (reading.kind !== 'plumb') return rows;
  const mean = rows[0]!.map((_, j) => rows.reduce((sum, row) => sum + row[j]!, 0) / rows.length);
  return rows.map((row) => row.map((entry, j) => entry - mean[j]!));
}

function describe(reading: Reading, sdBefore: number, sdAfter: number): NextReading {
  const place = reading.kind === 'straightedge' ? reading.from : reading.kind === 'diagonal' ? reading.from : reading;
  return {
    kind: reading.kind,
    wall: 'wall' in reading ? reading.wall : null,
    side: 'side' in reading ? reading.side : reading.kind === 'diagonal' ? reading.from.side : null,
    height: 'height' in place ? place.height : 0,
    at: 'at' in place ? place.at : null,
    sdBefore,
    sdAfter,
  };
}

function dot(a: ArrayLike<number>, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function bilinear(a: ArrayLike<number>, c: Matrix, b: ArrayLike<number>): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) {
    if (a[i] === 0) continue;
    for (let j = 0; j < b.length; j++) sum += a[i]! * c.get(i, j) * b[j]!;
  }
  return sum;
}
