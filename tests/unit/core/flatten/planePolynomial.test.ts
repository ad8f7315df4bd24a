import { describe, expect, it } from 'vitest';
import { planePolynomial } from '../../../../src/core/flatten/planePolynomial';

const region = { u: [100, 700], v: [-700, 900] } as { u: [number, number]; v: [number, number] };

describe('planePolynomial', () => {
  it('has every monomial up to its degree but the constant', () => {
    expect([1, 2, 3, 5].map((degree) => planePolynomial(degree, region).count)).toEqual([2, 5, 9, 20]);
  });

  it('runs from −1 to 1 over the region', () => {
    const { values, linear } = planePolynomial(3, region);
    expect([values(100, 0)[linear.u], values(700, 0)[linear.u], values(400, 0)[linear.u]]).toEqual([-1, 1, 0]);
    expect([values(0, -700)[linear.v], values(0, 900)[linear.v]]).toEqual([-1, 1]);
  });

  it('has the slopes of its values', () => {
    const { values, slopes } = planePolynomial(4, region);
    const [u, v, h] = [250, 310, 1e-2];
    const { u: alongU, v: alongV } = slopes(u, v);
    alongU.forEach((slope, t) => expect(slope).toBeCloseTo((values(u + h, v)[t]! - values(u - h, v)[t]!) / (2 * h), 9));
    alongV.forEach((slope, t) => expect(slope).toBeCloseTo((values(u, v + h)[t]! - values(u, v - h)[t]!) / (2 * h), 9));
  });
});
