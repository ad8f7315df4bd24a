import { describe, expect, it } from 'vitest';
import { scan } from '../../../../src/core/job-file';
import { condenseScan, type PointCloud, type ScanCells, segmentScan } from '../../../../src/core/scan';
import { frontAt, plausibleAlcove, rimAt, wallAt } from '../../../simulate';
import { clutteredScene, emptyScene, NO_ERRORS, type Scene, scanOf, usualStations } from '../../../simulate/scanner';

const alcove = plausibleAlcove(3);
const IN_PLACE = { rotation: [1, 0, 0, 0, 1, 0, 0, 0, 1], translation: [0, 0, 0] as [number, number, number] };

/** Cells in the alcove's own frame, so that they compare with the truth as they are. */
function cellsOf(
  scene: Scene,
  noise: number,
  clutterShare?: number,
): { cloud: PointCloud; labels: Uint8Array; cells: ScanCells } {
  const { cloud } = scanOf(scene, {
    points: 120_000,
    seed: 3,
    errors: { ...NO_ERRORS, noise, beam: noise },
    stations: usualStations(),
    ...(clutterShare !== undefined && { clutterShare }),
  });
  const outcome = segmentScan(cloud, { upKnown: true });
  if ('reason' in outcome) throw new Error(outcome.reason);
  return { cloud, labels: outcome.labels, cells: condenseScan(cloud, outcome.labels, IN_PLACE)! };
}

function errorsOf({ surfaces }: ScanCells, name: 'back' | 'left' | 'right' | 'rim', truth = alcove) {
  const grid = surfaces[name]!;
  return grid.value.flatMap((value, k) => {
    if (value === null) return [];
    const a = grid.from[0] + (k % grid.columns) * grid.size;
    const b = grid.from[1] + Math.floor(k / grid.columns) * grid.size;
    const error = value - (name === 'rim' ? rimAt(truth, a, b) : wallAt(truth, name, a, b));
    return [{ error, normed: error / grid.sd[k]! }];
  });
}
const mean = (values: number[]): number => values.reduce((sum, each) => sum + each, 0) / values.length;

describe('condenseScan', () => {
  it('gives cells of the walls themselves where nothing errs', () => {
    const { cells } = cellsOf(emptyScene(alcove), 0);
    for (const name of ['back', 'left', 'right'] as const) {
      const errors = errorsOf(cells, name).map(({ error }) => Math.abs(error));
      expect(errors.length, name).toBeGreaterThan(300);
      expect(Math.max(...errors), name).toBeLessThan(0.15);
    }
  });

  it('is unbiased, and as far off as it says, with noise and a person, towels and bottles in the way', () => {
    for (const { cells } of [cellsOf(emptyScene(alcove), 2), cellsOf(clutteredScene(alcove), 2, 0.6)]) {
      for (const name of ['back', 'left', 'right'] as const) {
        const errors = errorsOf(cells, name);
        expect(Math.abs(mean(errors.map(({ error }) => error))), name).toBeLessThan(0.25);
        expect(Math.sqrt(mean(errors.map(({ normed }) => normed ** 2))), name).toBeLessThan(1.5);
      }
      expect(Math.abs(mean(errorsOf(cells, 'rim').map(({ error }) => error)))).toBeLessThan(0.8);
    }
  });

  it('gives the front edges where the wall beside the opening shows', () => {
    const { cells } = cellsOf(emptyScene(alcove), 2);
    for (const side of ['left', 'right'] as const) {
      expect(cells.front[side].length).toBeGreaterThan(10);
      for (const { height, value, sd } of cells.front[side]) {
        expect(Math.abs(value - frontAt(alcove, side, height))).toBeLessThan(1);
        expect(sd).toBeGreaterThanOrEqual(1);
      }
    }
  });

  it('keeps a rim that few points lie on, near where it is and as far off as it says', () => {
    for (const [seed, points] of [
      [3, 120_000],
      [4, 60_000],
      [7, 40_000],
    ] as const) {
      const thinly = plausibleAlcove(seed);
      const { cloud } = scanOf(clutteredScene(thinly), {
        points,
        seed,
        errors: { ...NO_ERRORS, noise: 2, beam: 3, dropOut: 0.05 },
        stations: usualStations(),
        clutterShare: 0.3,
      });
      const outcome = segmentScan(cloud, { upKnown: true });
      if ('reason' in outcome) throw new Error(outcome.reason);
      const errors = errorsOf(condenseScan(cloud, outcome.labels, IN_PLACE)!, 'rim', thinly);
      expect(errors.length, `alcove ${seed}`).toBeGreaterThanOrEqual(10);
      expect(Math.abs(mean(errors.map(({ error }) => error))), `alcove ${seed}`).toBeLessThan(0.5);
      expect(Math.sqrt(mean(errors.map(({ normed }) => normed ** 2))), `alcove ${seed}`).toBeLessThan(1.4);
    }
  });

  it('makes what a job file takes, in a hundredth of the points or less', () => {
    const { cells } = cellsOf(emptyScene(alcove), 2);
    expect(scan.safeParse({ id: 'scan', kind: 'scan', ...cells }).success).toBe(true);
    expect(JSON.stringify(cells).length).toBeLessThan(80_000);
  });

  it('leaves out a surface whose points were taken away, and stops when cancelled', () => {
    const { cloud, labels } = cellsOf(emptyScene(alcove), 0);
    const without = labels.map((label) => (label === 4 ? 0 : label));
    const cells = condenseScan(cloud, without, IN_PLACE)!;
    expect(Object.keys(cells.surfaces).sort()).toEqual(['back', 'right', 'rim']);
    expect(condenseScan(cloud, labels, IN_PLACE, { cancelled: () => true })).toBe(null);
  });
});
