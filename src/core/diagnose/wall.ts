import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import type { Alcove } from '../alcove';
import { add, constant, type Dual, negate, scale, subtract } from '../dual';
import type { WallName } from '../job-file';
import { spaced } from '../range';
import { deviationReport } from './deviation';
import type { SampledSurface, WallReport } from './report';

/** The stretch of a wall that is judged, and the one that is drawn, mm. */
export interface WallExtent {
  at: [number, number];
  /** panelled height */
  height: [number, number];
  /** drawn height */
  drawn: [number, number];
}

const GRID = 17;

/** Plumb, bow and twist of a wall over its panelled area, with their standard deviations, and its samples. */
export function wallReport(alcove: Alcove, covariance: Matrix, wall: WallName, extent: WallExtent): WallReport {
  const [a0, a1] = extent.at;
  const [h0, h1] = extent.height;
  const middleAt = (a0 + a1) / 2;
  const field = (at: number, height: number): Dual => alcove[wall].at(constant(at), constant(height));
  const towardsRoom = (at: number, height: number): Dual =>
    wall === 'right' ? negate(field(at, height)) : field(at, height);
  const sd = (quantity: Dual): number => standardDeviation(quantity, covariance);

  const top = towardsRoom(middleAt, h1);
  const bottom = towardsRoom(middleAt, h0);
  const plumb = scale(subtract(top, bottom), 1000 / (h1 - h0));
  const bow = subtract(scale(add(top, bottom), 0.5), towardsRoom(middleAt, (h0 + h1) / 2));
  const level = Math.min(Math.max(0, h0), h1);
  const across = subtract(
    scale(add(towardsRoom(a0, level), towardsRoom(a1, level)), 0.5),
    towardsRoom(middleAt, level),
  );
  const twist = subtract(add(towardsRoom(a1, h1), towardsRoom(a0, h0)), add(towardsRoom(a0, h1), towardsRoom(a1, h0)));
  return {
    judged: { at: extent.at, height: extent.height },
    plumb: plumb.value,
    plumbSd: sd(plumb),
    bow: bow.value,
    bowSd: sd(bow),
    bowAcross: across.value,
    bowAcrossSd: sd(across),
    twist: twist.value,
    twistSd: sd(twist),
    sampled: sampleSurface(field, extent.at, extent.drawn, covariance),
    deviation: deviationReport(towardsRoom, spaced(...extent.at, GRID), spaced(...extent.height, GRID), covariance),
  };
}

/** Values and standard deviations of a height field on an even grid. */
export function sampleSurface(
  field: (a: number, b: number) => Dual,
  a: [number, number],
  b: [number, number],
  covariance: Matrix,
  count = GRID,
): SampledSurface {
  const at = spaced(...a, count);
  const height = spaced(...b, count);
  const duals = height.map((y) => at.map((x) => field(x, y)));
  return {
    at,
    height,
    value: duals.map((row) => row.map(({ value }) => value)),
    sd: duals.map((row) => row.map((each) => standardDeviation(each, covariance))),
  };
}
