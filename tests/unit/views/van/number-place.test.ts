import { expect, it } from 'vitest';
import { numberPlace } from '../../../../src/views/van/number-place';

const sheet = { width: 1000, height: 2000 };

it('puts the number in the middle of a piece that holds it', () =>
  expect(numberPlace({ x: 100, y: 200, width: 400, height: 600 }, sheet, 50)).toEqual({ x: 300, y: 500, size: 50 }));

it('puts the number of a narrow strip past its far end, smaller', () => {
  expect(numberPlace({ x: 0, y: 100, width: 900, height: 20 }, sheet, 50)).toEqual({ x: 930, y: 110, size: 25 });
  expect(numberPlace({ x: 0, y: 100, width: 40, height: 1800 }, sheet, 50)).toEqual({ x: 20, y: 1930, size: 36 });
});

it('never loses a number beyond the sheet', () =>
  expect(numberPlace({ x: 0, y: 0, width: 1000, height: 20 }, sheet, 50).x).toBe(1030));
