import { describe, expect, it } from 'vitest';
import { type ScanFinding, solve } from '../../../../src/core';
import type { Reading, Scan, ScanSurface } from '../../../../src/core/job-file';
import { exactValue, fullPlan, jobWith, plausibleAlcove, type Unread, withBlunder } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';

const alcove = plausibleAlcove(9);
const read = (reading: Unread): Reading => ({ ...reading, value: exactValue(alcove, reading) }) as Reading;
const hand: Reading[] = [
  read({ id: 'left', kind: 'tape-to-corner', side: 'left', height: 0 }),
  read({ id: 'right', kind: 'tape-to-corner', side: 'right', height: 0 }),
  read({ id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 }),
  read({ id: 'low', kind: 'span', height: -400, at: 400 }),
  read({ id: 'high', kind: 'span', height: 500, at: 400 }),
];
const found = (scan: Scan, readings = hand): ScanFinding =>
  solve(jobWith(readings, { scans: [scan] })).adjustment.scans[0]!;
const of = (finding: ScanFinding, surface: ScanSurface) => finding.surfaces.find((each) => each.surface === surface)!;
const shifted = (scan: Scan, surface: ScanSurface, change: (value: number, k: number) => number): Scan => {
  const grid = scan.surfaces[surface]!;
  const value = grid.value.map((each, k) => (each === null ? null : change(each, k)));
  return { ...scan, surfaces: { ...scan.surfaces, [surface]: { ...grid, value } } };
};

describe('scanFindings', () => {
  it('tell how far a surface is off as a whole, towards the room, from the readings by hand', () => {
    const exact = { ...cellScan(alcove, { sd: 0.05 }), scaleSd: 0.1, biasSd: 3 };
    const narrow = shifted(
      shifted(exact, 'left', (x) => x + 3),
      'right',
      (x) => x - 3,
    );
    for (const [scan, truth] of [
      [exact, 0],
      [narrow, 3],
    ] as const) {
      const finding = found(scan);
      const [left, right] = [of(finding, 'left').bias!, of(finding, 'right').bias!];
      // Tapes tell the width, and with it both together; how it is shared, only as far as the priors do.
      expect(Math.abs(left.value + right.value - 2 * truth)).toBeLessThan(1);
      expect(Math.abs(left.value - truth)).toBeLessThan(2.5 * left.sd);
      expect(Math.abs(right.value - truth)).toBeLessThan(2.5 * right.sd);
    }
    expect(of(found(exact), 'back').bias).toBeNull();
  });

  it('say so where no reading by hand tells', () => {
    const finding = found(cellScan(alcove, { sd: 0.05 }), []);
    expect(finding.surfaces.map(({ bias }) => bias)).toEqual(finding.surfaces.map(() => null));
  });

  it('tell points and noise as the job states them', () => {
    const scan = cellScan(alcove, { size: 200 });
    scan.surfaces.back = { ...scan.surfaces.back!, points: 1234, noise: 1.7 };
    expect(of(found(scan), 'back')).toMatchObject({ points: 1234, noise: 1.7 });
    expect(of(found(scan), 'left')).toMatchObject({ points: null, noise: null });
  });

  it('tell what share was seen, and what is assumed', () => {
    const whole = cellScan(alcove, { size: 50 });
    const grid = whole.surfaces.left!;
    const rows = grid.value.length / grid.columns;
    const upperHalf = (each: number | null, k: number) => (Math.floor(k / grid.columns) < rows / 2 ? null : each);
    const half: Scan = {
      ...whole,
      surfaces: { ...whole.surfaces, left: { ...grid, value: grid.value.map(upperHalf), sd: grid.sd.map(upperHalf) } },
    };
    expect(of(found(whole), 'left').seen).toBeGreaterThan(0.85);
    expect(of(found(half), 'left').seen! / of(found(whole), 'left').seen!).toBeCloseTo(0.5, 1);
    const besideBack = shifted(whole, 'rim', (y) => y);
    const { columns, from, size } = besideBack.surfaces.rim!;
    const behind = (each: number | null, k: number) => (from[1] + Math.floor(k / columns) * size > 150 ? null : each);
    besideBack.surfaces.rim!.value = besideBack.surfaces.rim!.value.map(behind);
    besideBack.surfaces.rim!.sd = besideBack.surfaces.rim!.sd.map(behind);
    expect(of(found(whole), 'rim').seen! - of(found(besideBack), 'rim').seen!).toBeGreaterThan(0.15);
    const bare: Scan = { ...whole, front: { left: [], right: [] }, surfaces: { back: whole.surfaces.back! } };
    expect(found(bare, []).surfaces.map(({ surface }) => surface)).toEqual(['back']);
    expect(of(found(whole), 'left').assumed).toEqual([]);
  });

  it('draw what is left after the shape where it lies', () => {
    const plain = cellScan(alcove, { sd: 0.1, size: 50 });
    const { from, size, columns } = plain.surfaces.right!;
    const [at, height] = [350, 150];
    const dented = shifted(plain, 'right', (x, k) => {
      const [a, b] = [from[0] + (k % columns) * size, from[1] + Math.floor(k / columns) * size];
      return Math.abs(a - at) < 50 && Math.abs(b - height) < 50 ? x - 4 : x;
    });
    const { residuals } = of(found(dented), 'right');
    const best = residuals!.value.reduce<number>(
      (k, each, i) => (Math.abs(each ?? 0) > Math.abs(residuals!.value[k] ?? 0) ? i : k),
      0,
    );
    const place = [
      residuals!.from[0] + (best % residuals!.columns) * residuals!.size,
      residuals!.from[1] + Math.floor(best / residuals!.columns) * residuals!.size,
    ];
    expect(Math.abs(place[0]! - at)).toBeLessThanOrEqual(60);
    expect(Math.abs(place[1]! - height)).toBeLessThanOrEqual(60);
    // Nearer to the room: x grows smaller on the right wall.
    expect(residuals!.value[best]).toBeGreaterThan(0.5);
    expect(residuals!.sd[best]).toBeLessThan(0.2);
  });

  it('name the readings on a surface that disagree', () => {
    const wrong = withBlunder(fullPlan(alcove), 'corner-left-3', 15);
    const finding = found(cellScan(alcove), wrong);
    expect(of(finding, 'left').against).toEqual(['corner-left-3']);
    expect(of(finding, 'right').against).toEqual([]);
  });
});
