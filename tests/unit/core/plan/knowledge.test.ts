import { inverse, Matrix } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { influenceOf, updated, variancesAfter, watch } from '../../../../src/core/plan/knowledge';
import { randomFrom } from '../../../simulate';

const random = randomFrom(12);
const vector = (): Float64Array => Float64Array.from({ length: 5 }, () => random.normal(0, 1));
const prior = Array.from({ length: 5 }, (_, i) => Float64Array.from({ length: 5 }, (_, j) => (i === j ? 1 + i : 0.1)));
const rows = [vector(), vector(), vector()];
const gradients = [vector(), vector()];

/** The covariance the long way: the inverse of the sum of the informations. */
const theLongWay = inverse(inverse(new Matrix(prior)).add(new Matrix(rows).transpose().mmul(new Matrix(rows))));

describe('knowledge', () => {
  it('after readings is the inverse of the summed information', () => {
    updated(prior, rows).forEach((line, i) => {
      line.forEach((entry, j) => expect(entry).toBeCloseTo(theLongWay.get(i, j), 10));
    });
  });

  it('comes back when they are taken back', () => {
    updated(updated(prior, rows), rows, -1).forEach((line, i) => {
      line.forEach((entry, j) => expect(entry).toBeCloseTo(prior[i]![j]!, 9));
    });
  });

  it('tells what readings would bring without being updated', () => {
    const after = variancesAfter(prior, watch(prior, gradients), rows);
    const { variances } = watch(updated(prior, rows), gradients);
    after.forEach((each, e) => expect(each).toBeCloseTo(variances[e]!, 10));
  });

  it('gives the covariance of a quantity with the parameters', () => {
    const influence = influenceOf(prior, gradients[0]!);
    const expected = new Matrix(prior).mmul(Matrix.columnVector(gradients[0]!)).to1DArray();
    influence.forEach((each, i) => expect(each).toBeCloseTo(expected[i]!, 12));
  });
});
