import Decimal from 'decimal.js';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Job, priceOf } from '../../src/core';
import { priceLine } from '../../src/core/price/line';
import { plainlyTrimmedDemo } from '../unit/scene/solvedDemo';

/*
 * Rounding checked against decimal.js, an independent arbitrary-precision decimal library, and whole prices against
 * sums worked out by hand below.
 */
Decimal.set({ precision: 60, rounding: Decimal.ROUND_HALF_UP });

const perHour = 60;

describe('a line of a price', () => {
  it('is the quantity as printed times the price, to the cent, as decimal.js works it out', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 100_000 }), fc.integer({ min: 0, max: 10_000_000 }), (steps, each) => {
        const metres = priceLine('x', 'materials', 'x', [steps / 100, 'metre'], each);
        expect(metres.amount).toBe(new Decimal(metres.quantity).times(each).toDecimalPlaces(0).toNumber());
        const feet = priceLine('x', 'materials', 'x', [steps / 100, 'foot'], each);
        expect(feet.amount).toBe(new Decimal(feet.quantity).times(each).toDecimalPlaces(0).toNumber());
        const minutes = priceLine('x', 'labour', 'x', [steps, 'minute'], each);
        expect(minutes.amount).toBe(new Decimal(steps).times(each).div(perHour).toDecimalPlaces(0).toNumber());
      }),
      { numRuns: 2000 },
    );
  });
});

describe('tax and waste', () => {
  const { job, result } = plainlyTrimmedDemo();

  it('are the decimal share of the sums, rounded once, as decimal.js works them out', () => {
    const rate = fc.integer({ min: 1, max: 100_000 }).map((thousandths) => thousandths / 1000);
    fc.assert(
      fc.property(rate, rate, fc.integer({ min: 1, max: 1000 }), (materials, labour, permille) => {
        const waste = permille / 1000;
        const priced: Job = { ...job, prices: { ...job.prices, waste, tax: { name: 'T', materials, labour } } };
        const price = priceOf(priced, result);
        for (const { of, percent, amount } of price.taxes) {
          expect(amount).toBe(new Decimal(of).times(percent).div(100).toDecimalPlaces(0).toNumber());
        }
        const cut = price.lines.filter(({ id }) => /^(sheet\.|trim$|angle-strip$|shelf$)/.test(id));
        const sum = cut.reduce((total, line) => total.plus(line.amount!), new Decimal(0));
        expect(price.lines.find(({ id }) => id === 'waste')!.amount).toBe(
          sum.times(waste).toDecimalPlaces(0).toNumber(),
        );
      }),
      { numRuns: 200 },
    );
  });
});

describe('a small job, worked out by hand', () => {
  const { job, result } = plainlyTrimmedDemo();
  const step = (id: string, duration: number, people: 1 | 2) => ({
    ...result.sequence[0]!,
    id,
    duration,
    people,
    kind: 'work' as const,
  });
  const one = result.layout.sheets[0]!;
  const pack = (id: string, count: number) => ({
    ...result.materials.lines[0]!,
    id,
    packs: { size: 1, count, leftOver: 0 },
  });
  const small = {
    layout: {
      ...result.layout,
      sheets: [
        { ...one, like: 'back' as const },
        { ...one, like: 'left' as const },
        { ...one, like: 'left' as const },
      ],
    },
    pieces: { trim: result.pieces.trim.slice(0, 1), legs: [], fillers: [], shelves: [] },
    stock: { bars: [], bought: 4876.8, lowerBound: 4876.8, waste: 0, optimal: true, unplaced: [] },
    materials: { ...result.materials, lines: [pack('adhesive', 3), pack('sealant', 2)] },
    sequence: [step('cut.back', 47, 1), step('set.back', 25, 2), step('plumbing', 61, 1)],
  };
  const priced: Job = {
    ...job,
    finish: { ...job.finish, look: 'ribbed' },
    prices: {
      currency: 'USD',
      sheets: { back: 28999, left: 15450 },
      looks: { ribbed: 1275 },
      trim: [{ upTo: 100, metre: 1149 }],
      packs: { adhesive: 1495, sealant: 1089 },
      labour: { hour: 6450, plumbing: 10999 },
      waste: 0.075,
      disposal: 8500,
      others: [{ label: 'delivery', amount: 4500, taxedAs: 'materials' }],
      tax: { name: 'Sales tax', materials: 6.875, labour: 0 },
    },
  };

  /*
   * sheets   1 × (289.99 + 12.75) = 302.74;  2 × (154.50 + 12.75) = 334.50
   * trim     4.8768 m is 4.88 m × 11.49 = 56.0712 → 56.07
   * waste    7.5 % of 302.74 + 334.50 + 56.07 = 693.31 → 51.99825 → 52.00
   * packs    3 × 14.95 = 44.85;  2 × 10.89 = 21.78;  delivery 45.00
   *          materials 302.74 + 334.50 + 56.07 + 52.00 + 44.85 + 21.78 + 45.00 = 856.94
   * work     47 min × 64.50 / 60 = 50.525 → 50.53;  2 × 25 min → 53.75;  61 min × 109.99 / 60 = 111.82316… → 111.82
   *          labour 50.53 + 53.75 + 111.82 + 85.00 = 301.10
   * tax      6.875 % of 856.94 = 58.914625 → 58.91
   * total    856.94 + 301.10 + 58.91 = 1216.95
   */
  it('comes to the cent where lengths are in mm', () => {
    const price = priceOf({ ...priced, display: 'mm' }, small);
    expect(Object.fromEntries(price.lines.map(({ id, amount }) => [id, amount]))).toEqual({
      'sheet.back': 30274,
      'sheet.left': 33450,
      trim: 5607,
      waste: 5200,
      adhesive: 4485,
      sealant: 2178,
      'labour.cut': 5053,
      'labour.fit': 5375,
      'labour.plumbing': 11182,
      disposal: 8500,
      'other.0': 4500,
    });
    expect(price.sums).toEqual({ materials: 85694, labour: 30110, other: 0 });
    expect(price.taxes).toEqual([{ name: 'Sales tax', on: 'materials', percent: 6.875, of: 85694, amount: 5891 }]);
    expect(price.total).toBe(121695);
  });

  /*
   * trim     4876.8 mm is 16 ft; 11.49 a metre is 3.502… a foot → 3.50; 16 × 3.50 = 56.00
   * waste    7.5 % of 302.74 + 334.50 + 56.00 = 693.24 → 51.993 → 51.99
   *          materials 302.74 + 334.50 + 56.00 + 51.99 + 44.85 + 21.78 + 45.00 = 856.86
   * tax      6.875 % of 856.86 = 58.909125 → 58.91
   * total    856.86 + 301.10 + 58.91 = 1216.87
   */
  it('comes to the cent where lengths are in inches and trim is sold by the foot', () => {
    const price = priceOf({ ...priced, display: 'in' }, small);
    expect(price.lines.find(({ id }) => id === 'trim')).toMatchObject({
      quantity: 16,
      unit: 'foot',
      each: 350,
      amount: 5600,
    });
    expect(price.lines.find(({ id }) => id === 'waste')!.amount).toBe(5199);
    expect(price.sums).toEqual({ materials: 85686, labour: 30110, other: 0 });
    expect(price.total).toBe(121687);
  });
});
