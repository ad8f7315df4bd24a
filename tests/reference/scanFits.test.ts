import { Matrix, SVD } from 'ml-matrix';
import { describe, expect, it } from 'vitest';
import { solveLeastSquares } from '../../src/core/least-squares';
import { addHeight, type Heights, roomForHeights } from '../../src/core/scan/heights';
import { robustField } from '../../src/core/scan/robustField';
import { smallestAxis } from '../../src/core/scan/smallestAxis';
import { randomFrom } from '../simulate';
import york from './data/pearson_york_tls.json';

describe('straight line with errors in both coordinates', () => {
  // Pearson 1901's points with York 1966's weights; values as published by York 2004, from the data file.
  it('is the published one, with its standard deviations', () => {
    const { x, y, wx, wy, published } = york;
    const n = x.length;
    const outcome = solveLeastSquares({
      start: [5, -0.5, ...x],
      evaluate(unknowns) {
        const misfit = new Float64Array(2 * n);
        const jacobian: Float64Array[] = [];
        for (let i = 0; i < n; i++) {
          const [sx, sy] = [Math.sqrt(wx[i]!), Math.sqrt(wy[i]!)];
          const at = unknowns[2 + i]!;
          const across = new Float64Array(2 + n);
          across[2 + i] = sx;
          misfit[2 * i] = sx * (x[i]! - at);
          const up = new Float64Array(2 + n);
          up[0] = sy;
          up[1] = sy * at;
          up[2 + i] = sy * unknowns[1]!;
          misfit[2 * i + 1] = sy * (y[i]! - unknowns[0]! - unknowns[1]! * at);
          jacobian.push(across, up);
        }
        return { misfit, jacobian };
      },
    });
    if (!outcome.ok) throw new Error(outcome.reason);
    const { solution } = outcome;
    const { a, b, sigma_a, sigma_b, reduced_chisq } = published.weighted;
    expect(solution.x[0]).toBeCloseTo(a, 8);
    expect(solution.x[1]).toBeCloseTo(b, 8);
    expect(solution.s0! ** 2).toBeCloseTo(reduced_chisq, 7);
    // York's standard deviations are at the adjusted points; those of the linearised problem agree within 5 %.
    expect(Math.sqrt(solution.cofactors.get(0, 0)) / sigma_a).toBeCloseTo(1, 1);
    expect(Math.sqrt(solution.cofactors.get(1, 1)) / sigma_b).toBeCloseTo(1, 1);
  });
});

function heightsOf(points: readonly (readonly [number, number, number])[]): Heights {
  const heights = roomForHeights(points.length);
  for (const point of points) addHeight(heights, ...point);
  return heights;
}

describe('plane through points', () => {
  const random = randomFrom(12);
  const points = Array.from({ length: 400 }, () => {
    const [u, v] = [random.between(-700, 700), random.between(-700, 700)];
    return [u, v, 12 + 0.02 * u - 0.015 * v + random.normal(0, 2)] as const;
  });
  const middle = [0, 1, 2].map((k) => points.reduce((sum, p) => sum + p[k]!, 0) / points.length);
  const centred = points.map((p) => p.map((value, k) => value - middle[k]!));
  // The reference: singular value decomposition by ml-matrix of the centred points.
  const svd = new SVD(new Matrix(centred), { autoTranspose: true });
  const normal = [0, 1, 2].map((k) => svd.rightSingularVectors.get(k, 2));

  it('has the normal and thickness that the singular values give', () => {
    const of = (i: number, j: number): number => centred.reduce((sum, p) => sum + p[i]! * p[j]!, 0) / points.length;
    const { axis, values } = smallestAxis([of(0, 0), of(0, 1), of(0, 2), of(1, 1), of(1, 2), of(2, 2)]);
    const cosine = Math.abs(axis.reduce((sum, each, k) => sum + each * normal[k]!, 0));
    expect(cosine).toBeCloseTo(1, 12);
    expect(Math.sqrt(values[0] * points.length)).toBeCloseTo(svd.diagonal[2]!, 6);
  });

  it('is the robust one where nothing is wrong, and stays it with a third of the points before the wall', () => {
    const start = Float64Array.of(0.012, 0.02, -0.015, 0, 0, 0);
    const options = { start, within: [15, 15, 15, 15], bowSd: 1e-6 };
    const plain = robustField(heightsOf(points), options)!;
    expect(plain.field[1]).toBeCloseTo(-normal[0]! / normal[2]!, 3);
    expect(plain.field[2]).toBeCloseTo(-normal[1]! / normal[2]!, 3);
    const hung = points.slice(0, 200).map(([u, v, w]) => [u, v, w + 14] as const);
    const spoilt = robustField(heightsOf([...points, ...hung]), options)!;
    expect(spoilt.field[1]).toBeCloseTo(plain.field[1]!, 2);
    expect(Math.abs(spoilt.field[0]! - plain.field[0]!)).toBeLessThan(1e-3);
  });
});
