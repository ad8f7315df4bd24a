import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { add, constant, type Dual, scale, subtract } from '../dual';
import { gridOver } from '../flatten';
import type { Job } from '../job-file';
import { bendingStrain, principalCurvature, type Seat } from '../seat';
import { patchesBeyond } from './patches';
import type { BedReport } from './report';

const STEPS = 24;

/** Strain at the face of a sheet from bending, where it is largest, with its ± from the survey. */
export function strainOf(seat: Seat, covariance: Matrix, { fit, bedding }: Job): BedReport['strain'] {
  const { surface, region } = seat;
  const strain = (u: number, v: number): number => bendingStrain(fit.thickness, principalCurvature(surface, u, v));
  const worst = gridOver(region, STEPS)
    .map(([u, v]) => ({ u, v, max: strain(u, v) }))
    .reduce((most, place) => (place.max > most.max ? place : most));
  const sd = bendingStrain(fit.thickness, standardDeviation(curvatureMove(seat, worst.u, worst.v), covariance));
  return {
    ...worst,
    sd,
    radius: worst.max > 1e-9 ? fit.thickness / (2 * worst.max) : null,
    limit: bedding.strainLimit,
    overBent: patchesBeyond(region, strain, bedding.strainLimit),
  };
}

/**
 * How the larger principal curvature at a place moves with the adjusted parameters, by second differences over a cell of
 * the grid on which sheets are bent. A place of greatest strain that moves does not count: strain is level there.
 */
function curvatureMove({ surface, region }: Seat, u: number, v: number): Dual {
  const [a, b] = [(region.u[1] - region.u[0]) / STEPS, (region.v[1] - region.v[0]) / STEPS];
  const [x, y] = [inside(u, a, region.u), inside(v, b, region.v)];
  const at = (du: number, dv: number): Dual => surface.at(constant(x + du * a), constant(y + dv * b));
  const bend = (low: Dual, high: Dual, step: number): Dual =>
    scale(subtract(add(low, high), scale(at(0, 0), 2)), 1 / step ** 2);
  const [uu, vv] = [bend(at(-1, 0), at(1, 0), a), bend(at(0, -1), at(0, 1), b)];
  const uv = scale(subtract(add(at(1, 1), at(-1, -1)), add(at(1, -1), at(-1, 1))), 1 / (4 * a * b));
  const [mean, half] = [scale(add(uu, vv), 0.5), scale(subtract(uu, vv), 0.5)];
  const radius = Math.hypot(half.value, uv.value);
  const turned = radius === 0 ? scale(half, 0) : add(scale(half, half.value / radius), scale(uv, uv.value / radius));
  return add(scale(mean, Math.sign(mean.value) || 1), turned);
}

const inside = (at: number, step: number, [from, to]: readonly [number, number]): number =>
  Math.min(Math.max(at, from + step), to - step);
