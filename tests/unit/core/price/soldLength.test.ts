import { describe, expect, it } from 'vitest';
import { priceAMetre, priceSold, soldLength } from '../../../../src/core';

describe('soldLength', () => {
  it('is the foot where lengths are in inches, else the metre', () => {
    expect([soldLength('in'), soldLength('mm')]).toEqual(['foot', 'metre']);
  });
});

describe('priceSold', () => {
  it('is 0.3048 of the price a metre by the foot, to the cent', () => {
    expect(priceSold(1000, 'foot')).toBe(305);
    expect(priceSold(1140, 'foot')).toBe(347);
    expect(priceSold(1140, 'metre')).toBe(1140);
  });

  it('gives every price back that was entered by the foot and kept by the metre', () => {
    for (let each = 0; each <= 20_000; each++) expect(priceSold(priceAMetre(each, 'foot'), 'foot')).toBe(each);
    expect(priceAMetre(347, 'foot')).toBe(1138);
    expect(priceAMetre(1140, 'metre')).toBe(1140);
  });
});
