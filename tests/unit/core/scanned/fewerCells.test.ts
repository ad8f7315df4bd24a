import { expect, it } from 'vitest';
import { fewerCells, type ScanInUse } from '../../../../src/core/scanned';

function scanOf(back: number, rim: number): ScanInUse {
  const cells = (n: number) => ({
    a: Float64Array.from({ length: n }, (_, k) => k),
    b: Float64Array.from({ length: n }, (_, k) => -k),
    value: Float64Array.from({ length: n }, (_, k) => 2 * k),
    sd: Float64Array.from({ length: n }, (_, k) => k + 1),
  });
  return { index: 0, scan: {} as ScanInUse['scan'], cells: { back: cells(back), rim: cells(rim) }, unknowns: [] };
}

it('keeps so many different cells of a surface, in order and from end to end, and all of one that has fewer', () => {
  const scan = scanOf(1000, 20);
  const fewer = fewerCells(scan, 100).cells;
  expect(fewer.rim).toBe(scan.cells.rim);
  const { a, b, value, sd } = fewer.back!;
  expect(new Set(a).size).toBe(100);
  expect(a.toSorted()).toEqual(a);
  for (let k = 0; k < 100; k++) {
    expect(Math.floor(a[k]! / 10)).toBe(k);
    expect([b[k], value[k], sd[k]]).toEqual([-a[k]!, 2 * a[k]!, a[k]! + 1]);
  }
});

it('does not take the same column of rows of a grid', () => {
  for (const columns of [7, 10, 31, 40]) {
    const { a } = fewerCells(scanOf(columns * 100, 0), 100).cells.back!;
    expect(new Set(Array.from(a, (k) => k % columns)).size).toBeGreaterThan(columns / 2);
  }
});
