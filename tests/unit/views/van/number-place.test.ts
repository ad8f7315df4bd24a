import { expect, it } from 'vitest';
import { numberPlaces } from '../../../../src/views/van/number-place';

const sheet = { width: 1000, height: 2000 };

it('puts the number in the middle of a piece that holds it', () =>
  expect(numberPlaces([{ x: 100, y: 200, width: 400, height: 600 }], sheet, 50)).toEqual([
    { x: 300, y: 500, leader: null },
  ]));

it('leads to a strip too narrow for its number from beside its nearer side', () => {
  const [across, up] = numberPlaces(
    [
      { x: 0, y: 300, width: 900, height: 20 },
      { x: 980, y: 100, width: 20, height: 1800 },
    ],
    sheet,
    50,
  );
  expect(across).toEqual({ x: -56.25, y: 310, leader: { x: 25, y: 310 } });
  expect(up).toEqual({ x: 1056.25, y: 1000, leader: { x: 990, y: 1000 } });
});

it('keeps numbers beside the sheet apart and within its height', () => {
  const strips = [0, 25, 50].map((y) => ({ x: 0, y, width: 400, height: 20 }));
  const heights = numberPlaces(strips, sheet, 50).map(({ y }) => y);
  expect(heights[0]).toBeGreaterThanOrEqual(25);
  expect(heights[1]! - heights[0]!).toBeGreaterThanOrEqual(50);
  expect(heights[2]! - heights[1]!).toBeGreaterThanOrEqual(50);
});
