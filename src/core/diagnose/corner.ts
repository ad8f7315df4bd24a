import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { scale } from '../dual';
import type { Side } from '../job-file';
import { cornerAngle } from '../survey';
import type { CornerReport } from './report';

/** Inside angle of a corner at the given heights, degrees. */
export function cornerReport(alcove: Alcove, covariance: Matrix, side: Side, heights: number[]): CornerReport {
  return {
    angle: heights.map((height) => {
      const degrees = scale(cornerAngle(alcove, side, height), 180 / Math.PI);
      return { height, value: degrees.value, sd: standardDeviation(degrees, covariance) };
    }),
  };
}
