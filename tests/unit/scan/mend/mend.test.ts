import { describe, expect, it } from 'vitest';
import { clustersOf, labelCounts, pointsInBox, pointsLabelled, relabel, takeBack } from '../../../../src/scan';

/** A row of points 5 apart from a place on, along x. */
const row = (count: number, x: number, y = 0) => Array.from({ length: count }, (_, i) => [x + 5 * i, y, 0]);
const positions = new Float32Array([...row(30, 0), ...row(50, 1000, -400), ...row(10, 2000)].flat());
const all = Uint32Array.from({ length: 90 }, (_, i) => i);

describe('clustersOf', () => {
  it('parts points by the empty space between them, the largest first', () => {
    const clusters = clustersOf(positions, all);
    expect(clusters.map(({ points }) => [points[0], points.length])).toEqual([
      [30, 50],
      [0, 30],
      [80, 10],
    ]);
    expect(clusters[0]).toMatchObject({ low: [1000, -400, 0], high: [1245, -400, 0] });
  });

  it('looks at the points given alone, and gives no more than asked for', () => {
    expect(
      clustersOf(
        positions,
        all.filter((i) => i % 2 === 1),
        1,
      ).map(({ points }) => points.length),
    ).toEqual([25]);
    expect(clustersOf(positions, new Uint32Array(0))).toEqual([]);
  });
});

describe('labels', () => {
  const labels = () => Uint8Array.from({ length: 90 }, (_, i) => (i < 30 ? 3 : 7));

  it('are counted and listed', () => {
    expect(labelCounts(labels(), 8)).toEqual([0, 0, 0, 30, 0, 0, 0, 60]);
    expect(pointsLabelled(labels(), 3)).toEqual(all.slice(0, 30));
  });

  it('are changed and taken back', () => {
    const now = labels();
    const change = relabel(now, Uint32Array.of(29, 30, 31), 5);
    expect(labelCounts(now, 8)).toEqual([0, 0, 0, 29, 0, 3, 0, 58]);
    takeBack(now, change);
    expect(now).toEqual(labels());
  });
});

it('picks the points of a box, its sides open where they are not told', () => {
  const picked = pointsInBox(
    positions,
    [
      [1100, null],
      [-500, -300],
      [null, null],
    ],
    (i) => i % 2 === 0,
  );
  expect(picked).toEqual(all.filter((i) => i >= 50 && i < 80 && i % 2 === 0));
});
