import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  add,
  arcTangent2,
  chain,
  constant,
  type Dual,
  divide,
  hypotenuse,
  larger,
  multiply,
  negate,
  scale,
  shift,
  smaller,
  subtract,
} from '../../../../src/core/dual';

/** The i-th of two parameters at a value. */
const parameter = (value: number, i: number): Dual => ({
  value,
  gradient: Float64Array.from([0, 1], (j) => (i === j ? 1 : 0)),
});

/** Central difference of f along each parameter. */
function differences(f: (a: number, b: number) => number, a: number, b: number): [number, number] {
  const h = 1e-5;
  return [(f(a + h, b) - f(a - h, b)) / (2 * h), (f(a, b + h) - f(a, b - h)) / (2 * h)];
}

const OPERATIONS: [name: string, of: (a: Dual, b: Dual) => Dual, plain: (a: number, b: number) => number][] = [
  ['add', add, (a, b) => a + b],
  ['subtract', subtract, (a, b) => a - b],
  ['multiply', multiply, (a, b) => a * b],
  ['divide', divide, (a, b) => a / b],
  ['shift', (a) => shift(a, 3), (a) => a + 3],
  ['scale', (a) => scale(a, -2.5), (a) => -2.5 * a],
  ['negate', negate, (a) => -a],
  ['hypotenuse', hypotenuse, (a, b) => Math.hypot(a, b)],
  ['arcTangent2', arcTangent2, (a, b) => Math.atan2(a, b)],
  ['larger', larger, (a, b) => Math.max(a, b)],
  ['smaller', smaller, (a, b) => Math.min(a, b)],
  [
    'a composition in which both operands return',
    (a, b) => divide(multiply(a, hypotenuse(a, b)), add(b, multiply(a, a))),
    (a, b) => (a * Math.hypot(a, b)) / (b + a * a),
  ],
];

const operand = fc.integer({ min: 50, max: 500 }).map((n) => n / 100);

describe('dual', () => {
  it.each(OPERATIONS)('%s carries value and derivatives', (_, of, plain) => {
    fc.assert(
      fc.property(operand, operand, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-4);
        const result = of(parameter(a, 0), parameter(b, 1));
        expect(result.value).toBeCloseTo(plain(a, b), 12);
        const [da, db] = differences(plain, a, b);
        expect(result.gradient![0]).toBeCloseTo(da, 7);
        expect(result.gradient![1]).toBeCloseTo(db, 7);
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('carries no derivatives where no operand has any', () => {
    for (const [, of] of OPERATIONS) expect(of(constant(2), constant(3)).gradient).toBeNull();
  });

  it('keeps the derivatives of one operand beside a constant', () => {
    expect(multiply(parameter(4, 0), constant(3)).gradient).toEqual(Float64Array.of(3, 0));
    expect(subtract(constant(3), parameter(4, 1)).gradient).toEqual(Float64Array.of(0, -1));
  });

  it('leaves its operands as they were', () => {
    const [a, b] = [parameter(2, 0), parameter(3, 1)];
    for (const [, of] of OPERATIONS) of(a, b);
    expect([a, b]).toEqual([parameter(2, 0), parameter(3, 1)]);
  });

  it('finds the angle in every quadrant', () => {
    for (const [y, x] of [
      [1, 1],
      [1, -1],
      [-1, -1],
      [-1, 1],
    ] as const) {
      expect(arcTangent2(parameter(y, 0), parameter(x, 1)).value).toBe(Math.atan2(y, x));
      expect(arcTangent2(parameter(y, 0), parameter(x, 1)).gradient![0]).toBeCloseTo(x / 2, 12);
    }
  });

  it('stays finite where a derivative does not exist', () => {
    for (const result of [
      hypotenuse(parameter(0, 0), parameter(0, 1)),
      arcTangent2(parameter(0, 0), parameter(0, 1)),
    ]) {
      expect(Number.isFinite(result.value)).toBe(true);
      expect([...result.gradient!]).toEqual([0, 0]);
    }
  });

  it('applies the chain rule to the partial derivatives it is given', () => {
    expect(chain(9, 2, parameter(1, 0), 5, parameter(1, 1))).toEqual({ value: 9, gradient: Float64Array.of(2, 5) });
    expect(chain(9, 0, parameter(1, 0))).toEqual({ value: 9, gradient: Float64Array.of(0, 0) });
    expect(chain(9, 2, constant(1))).toEqual({ value: 9, gradient: null });
  });
});
