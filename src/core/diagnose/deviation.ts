import type { Matrix } from 'ml-matrix';
import { standardDeviation } from '../adjust';
import { add, constant, type Dual, scale, subtract } from '../dual';
import type { DeviationReport } from './report';

/**
 * How far a wall stands off its best plumb plane and its best plane (least squares over the grid), towards the room
 * positive, with the standard deviation of that distance: what all points share, such as the wall's position, drops out.
 * @param towardsRoom the wall's height field towards the room, mm
 * @param at, height grid of even steps, mm
 */
export function deviationReport(
  towardsRoom: (at: number, height: number) => Dual,
  at: number[],
  height: number[],
  covariance: Matrix,
): DeviationReport {
  const field = height.map((y) => at.map((a) => towardsRoom(a, y)));
  const [middleAt, middleHeight] = [mean(at), mean(height)];
  const [fromMiddle, up] = [at.map((a) => a - middleAt), height.map((y) => y - middleHeight)];
  const level = weighted(field, () => 1 / (at.length * height.length));
  const slopeAt = weighted(field, (_, j) => fromMiddle[j]! / (height.length * squares(fromMiddle)));
  const slopeUp = weighted(field, (i) => up[i]! / (at.length * squares(up)));
  const fromPlumb = field.map((row) =>
    row.map((value, j) => subtract(value, add(level, scale(slopeAt, fromMiddle[j]!)))),
  );
  const fromPlane = fromPlumb.map((row, i) => row.map((value) => subtract(value, scale(slopeUp, up[i]!))));
  const sampled = (duals: Dual[][]) => ({
    value: duals.map((row) => row.map(({ value }) => value)),
    sd: duals.map((row) => row.map((dual) => standardDeviation(dual, covariance))),
  });
  return { at, height, plumb: sampled(fromPlumb), flat: sampled(fromPlane) };
}

const mean = (values: number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
const squares = (values: number[]): number => values.reduce((sum, value) => sum + value * value, 0);

const weighted = (field: Dual[][], weight: (i: number, j: number) => number): Dual =>
  field.flatMap((row, i) => row.map((value, j) => scale(value, weight(i, j)))).reduce(add, constant(0));
