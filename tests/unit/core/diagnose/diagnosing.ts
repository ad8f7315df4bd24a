import { Matrix } from 'ml-matrix';
import type { Adjustment } from '../../../../src/core/adjust';
import type { Alcove } from '../../../../src/core/alcove';
import { type Diagnosis, diagnose } from '../../../../src/core/diagnose';
import type { JobInput } from '../../../../src/core/job-file';
import { jobWith } from '../../../simulate';
import { alcoveOf } from '../skewedAlcove';

/** The diagnosis of an alcove whose parameters are known to `sd` each, independently. */
export function diagnosed(alcove: Alcove, choices: Partial<JobInput> = {}, sd = 0): Diagnosis {
  const covariance = Matrix.eye(25, 25, sd * sd);
  return diagnose({ alcove, covariance } as Adjustment, jobWith([], choices));
}

export const diagnosisOf = (values: Record<string, number>, choices: Partial<JobInput> = {}): Diagnosis =>
  diagnosed(alcoveOf(values), choices);
