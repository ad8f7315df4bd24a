import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { constant, type Dual, scale, subtract } from '../dual';
import type { Side } from '../job-file';
import { spaced } from '../range';
import type { FrontReport, RimReport } from './report';
import { sampleSurface } from './wall';

/** The rim's heights and how far it is out of level, over the given stretch. */
export function rimReport(alcove: Alcove, covariance: Matrix, x: [number, number], z: [number, number]): RimReport {
  const field = (at: number, out: number): Dual => alcove.rim.at(constant(at), constant(out));
  const sampled = sampleSurface(field, x, z, covariance);
  const middleX = (x[0] + x[1]) / 2;
  const along = scale(subtract(field(x[1], z[0]), field(x[0], z[0])), 1000 / (x[1] - x[0]));
  const across = scale(subtract(field(middleX, z[1]), field(middleX, z[0])), 1000 / (z[1] - z[0]));
  return {
    x: sampled.at,
    z: sampled.height,
    value: sampled.value,
    sd: sampled.sd,
    outOfLevel: {
      along: along.value,
      alongSd: standardDeviation(along, covariance),
      across: across.value,
      acrossSd: standardDeviation(across, covariance),
    },
  };
}

/** Front edge of a side wall over the given heights. */
export function frontReport(alcove: Alcove, covariance: Matrix, side: Side, heights: [number, number]): FrontReport {
  const height = spaced(...heights, 9);
  const edge = height.map((y) => alcove.front[side].at(constant(0), constant(y)));
  return { height, value: edge.map(({ value }) => value), sd: edge.map((each) => standardDeviation(each, covariance)) };
}
