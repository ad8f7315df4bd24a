import { describe, expect, it } from 'vitest';
import { scansInUse } from '../../../../src/core/scanned';
import { smoothingOf } from '../../../../src/core/scanned/smoothing';
import { type Hump, jobWith, plausibleAlcove } from '../../../simulate';
import { type CellScanOrder, cellScan } from '../../../simulate/scanner';

function smoothed(order: CellScanOrder, humps: Hump[] = []) {
  const scan = cellScan({ ...plausibleAlcove(6), humps }, { size: 50, surfaces: ['back'], ...order });
  const cells = scansInUse(jobWith([], { scans: [scan] }))[0]!.cells.back!;
  return smoothingOf(cells, 'back', [-750, 750], [-700, 1100]);
}
const hump = (rise: number, radius: number): Hump => ({ wall: 'back', at: 150, height: 100, rise, radius });

describe('smoothingOf', () => {
  it('takes no spline for a wall of plane, twist and bow, and finds the cells as noisy as they say', () => {
    const plain = smoothed({ sd: 0.3 });
    expect(plain.spline).toBe(null);
    expect(plain.factor).toBeGreaterThan(0.92);
    expect(plain.factor).toBeLessThan(1.08);
  });

  it('finds cells noisier than they say, with a hump as without', () => {
    for (const humps of [[], [hump(4, 200)]]) {
      const { factor } = smoothed({ sd: 0.3, times: 2.5 }, humps);
      expect(factor).toBeGreaterThan(2.3);
      expect(factor).toBeLessThan(2.7);
    }
  });

  it('takes a spline for a hump, with shorter intervals for a narrower one', () => {
    const wide = smoothed({ sd: 0.3 }, [hump(4, 350)]);
    const narrow = smoothed({ sd: 0.3 }, [hump(4, 120)]);
    expect(wide.spline).not.toBe(null);
    expect(narrow.spline!.interval).toBeLessThanOrEqual(wide.spline!.interval);
    expect(narrow.spline!.interval).toBeLessThanOrEqual(200);
  });
});
