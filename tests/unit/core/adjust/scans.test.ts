import { describe, expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { adjust, standardDeviation } from '../../../../src/core/adjust';
import { constant } from '../../../../src/core/dual';
import type { JobInput, Reading } from '../../../../src/core/job-file';
import { solveLeastSquares } from '../../../../src/core/least-squares';
import { eachCellEquation } from '../../../../src/core/scanned/cellEquations';
import { exactValue, fullPlan, jobWith, noisy, plausibleAlcove, type Unread, wallAt } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';

const alcove = plausibleAlcove(9);
const read = (reading: Unread, more: Partial<Reading> = {}): Reading =>
  ({ ...reading, value: exactValue(alcove, reading), ...more }) as Reading;
const TIES: Reading[] = [
  read({ id: 'left', kind: 'tape-to-corner', side: 'left', height: 0 }),
  read({ id: 'right', kind: 'tape-to-corner', side: 'right', height: 0 }),
  read({ id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 }),
  read({ id: 'span', kind: 'span', height: 500, at: 400 }),
];
const adjusted = (readings: Reading[], choices: Partial<JobInput>) => adjust(jobWith(readings, choices));

describe('adjust with scans', () => {
  it('gives walls of a scan back, its scale and place worked out from tapes', () => {
    const scan = cellScan(alcove, { sd: 0.2, scale: 0.004, across: 30, up: -40 });
    const { alcove: found, scans, solution } = adjusted(TIES, { scans: [scan] });
    const of = (name: string) => scans[0]!.unknowns.find((each) => each.name === name)!;
    expect(Math.abs(of('scale').value - 0.004)).toBeLessThan(3 * of('scale').sd);
    expect(of('scale').sd).toBeLessThan(0.001);
    expect(Math.abs(of('across').value - 30)).toBeLessThan(3 * of('across').sd);
    for (const wall of ['back', 'left', 'right'] as const) {
      for (const [at, height] of [
        [100, -500],
        [300, 0],
        [600, 800],
      ] as const) {
        expect(
          Math.abs(found[wall].value(at, height) - wallAt(alcove, wall, at, height)),
          `${wall} ${at} ${height}`,
        ).toBeLessThan(1.5);
      }
    }
    expect(solution.x.length).toBeLessThan(56);
  });

  it('takes no scan for smaller because its noise would shrink with it, with tapes or alone', () => {
    for (const readings of [[], TIES.slice(0, 3)]) {
      const { alcove: found, scans } = adjusted(readings, { scans: [cellScan(alcove, { size: 50 })] });
      const scale = scans[0]!.unknowns.find(({ name }) => name === 'scale')!;
      expect(Math.abs(scale.value), `${readings.length} readings`).toBeLessThan(2e-4);
      const wide = found.right.value(0, 0) - found.left.value(0, 0);
      expect(Math.abs(wide - (alcove.right.c - alcove.left.c)), `${readings.length} readings`).toBeLessThan(0.4);
    }
  });

  it('finds readings and scan as far apart as they say, not by rounding in what the scan leaves open', () => {
    const agreements = [3, 4, 5, 6].flatMap((seed) => {
      const truth = plausibleAlcove(seed);
      const scan = { ...cellScan(truth, { sd: 0.3, seed, size: 50 }), scaleSd: 2, tiltSd: 2, biasSd: 0.5 };
      const tape = { id: 'left', kind: 'tape-to-corner', side: 'left', height: 0 } as const;
      return [[], [{ ...tape, value: exactValue(truth, tape), sd: 0.5 }]].map(
        (readings) => adjust(jobWith(readings, { scans: [scan] })).s0!,
      );
    });
    // dof is about 25: within 0.5 and 1.5 but for once in many thousands
    expect(Math.min(...agreements)).toBeGreaterThan(0.5);
    expect(Math.max(...agreements)).toBeLessThan(1.5);
  });

  it('is the adjustment of every cell as a row of its own', () => {
    const job = jobWith(TIES, { scans: [cellScan(alcove, { sd: 0.4, size: 200 })] });
    const { model, problem, solution, supposition, scanFirsts } = adjust(job);
    const [scan] = supposition.scans;
    const direct = problem.rows.flatMap((row, i) => ('condensed' in row ? [] : [i]));
    const outcome = solveLeastSquares(
      {
        start: solution.x,
        evaluate(x) {
          const { misfit, jacobian } = problem.evaluate(x);
          const rows = direct.map((i) => jacobian[i]!);
          const misfits = direct.map((i) => misfit[i]!);
          eachCellEquation(
            model,
            scan!,
            scanFirsts[0]!,
            x.slice(0, model.parameters.length),
            ({ part, misfit: off, sd }, row) => {
              const used = sd * (scan!.factor[part] ?? 1);
              const line = new Float64Array(x.length);
              for (let k = 0; k < row.length; k++) line[row.index[k]!]! += row.value[k]! / used;
              // As in the adjustment, cells beyond three standard deviations count for less.
              const weight = Math.sqrt(Math.min(1, 3 / Math.abs(off / used)));
              rows.push(line.map((each) => weight * each));
              misfits.push((weight * off) / used);
            },
          );
          return { misfit: Float64Array.from(misfits), jacobian: rows };
        },
      },
      { tolerance: 1e-4 },
    );
    if (!outcome.ok) throw new Error(outcome.reason);
    solution.x.forEach((value, j) => {
      const sd = Math.sqrt(solution.cofactors.get(j, j));
      expect(Math.abs(value - outcome.solution.x[j]!) / sd, model.parameters[j]?.name).toBeLessThan(0.05);
      expect(Math.sqrt(outcome.solution.cofactors.get(j, j)) / sd, model.parameters[j]?.name).toBeCloseTo(1, 1);
    });
    expect(solution.redundancy[0]).toBeCloseTo(outcome.solution.redundancy[0]!, 2);
  });

  it('names a tape that contradicts the scan, with the value that fits', () => {
    const readings = [
      ...TIES,
      read({
        id: 'diagonal',
        kind: 'diagonal',
        from: { side: 'left', height: -500 },
        to: { side: 'right', height: 500 },
      }),
    ].map((reading) =>
      reading.id === 'span' && 'value' in reading ? { ...reading, value: reading.value + 12 } : reading,
    );
    const job = jobWith(readings, { scans: [{ ...cellScan(alcove), scaleSd: 0.5 }] });
    const { adjustment } = solve(job);
    expect(adjustment.suspect?.id).toBe('span');
    const truth = TIES.find(({ id }) => id === 'span') as Extract<Reading, { kind: 'span' }>;
    expect(Math.abs(adjustment.suspect!.fits - truth.value)).toBeLessThan(1.5);
  });

  it('sets its own scale free where the tapes agree that it is far off', () => {
    const scan = { ...cellScan(alcove, { sd: 0.2, scale: 0.03, size: 200 }), scaleSd: 1 };
    const readings = [...TIES, read({ id: 'span2', kind: 'span', height: -400, at: 300 })];
    const { adjustment } = solve(jobWith(readings, { scans: [scan] }));
    expect(adjustment.beyondPrior).toContain('scan scan: scale');
    const scale = adjustment.scans[0]!.unknowns.find(({ name }) => name === 'scale')!;
    expect(Math.abs(scale.value - 0.03)).toBeLessThan(0.002);
  });

  it('marks what the scan did not see as assumed, and widens its ±', () => {
    const scan = cellScan(alcove, { surfaces: ['back', 'left'] });
    const { adjustment } = solve(jobWith([], { scans: [{ ...scan, front: { left: scan.front.left, right: [] } }] }));
    expect(adjustment.assumed).toContain('right wall: position');
    expect(adjustment.assumed).toContain('rim: height');
    expect(adjustment.assumed).toContain('front edge of the right wall: position');
    expect(adjustment.assumed).not.toContain('left wall: position');
    expect(adjustment.assumed).not.toContain('front edge of the left wall: position');
  });

  it('is less sure of a wavy wall where the scan has a hole in it', () => {
    const wavy = { ...alcove, humps: [{ wall: 'left' as const, at: 300, height: 0, rise: 4, radius: 150 }] };
    const scan = cellScan(wavy, { size: 50 });
    const grid = scan.surfaces.left!;
    const hidden = (k: number): boolean => {
      const height = grid.from[1] + Math.floor(k / grid.columns) * grid.size;
      return height > 400 && height < 900;
    };
    const holed = {
      ...scan,
      surfaces: {
        ...scan.surfaces,
        left: {
          ...grid,
          value: grid.value.map((each, k) => (hidden(k) ? null : each)),
          sd: grid.sd.map((each, k) => (hidden(k) ? null : each)),
        },
      },
    };
    const { alcove: found, covariance, supposition } = adjusted([], { scans: [holed] });
    expect(supposition.uneven.map(({ wall }) => wall)).toEqual(['left']);
    const sdAt = (height: number) => standardDeviation(found.left.at(constant(300), constant(height)), covariance);
    expect(sdAt(650)).toBeGreaterThan(1.2 * sdAt(0));
  });

  it('reports a line for each surface, however many cells', () => {
    const { adjustment } = solve(jobWith(TIES, { scans: [cellScan(alcove, { size: 50 })] }));
    expect(adjustment.scans).toHaveLength(1);
    expect(adjustment.scans[0]!.surfaces.map(({ surface }) => surface)).toEqual([
      'back',
      'left',
      'right',
      'rim',
      'front.left',
      'front.right',
    ]);
    for (const { rms, cells, worst } of adjustment.scans[0]!.surfaces) {
      expect(rms).toBeGreaterThan(0.1);
      expect(rms).toBeLessThan(0.5);
      expect(cells).toBeGreaterThan(5);
      expect(worst.w).toBeLessThan(5);
    }
    expect(adjustment.readings.map(({ id }) => id)).toEqual(['left', 'right', 'drop', 'span']);
    expect(JSON.stringify(adjustment).length).toBeLessThan(30_000);
  });

  it('takes no notice of a scan that is off', () => {
    const readings = noisy(fullPlan(alcove), 3);
    const without = solve(jobWith(readings));
    expect(solve(jobWith(readings, { scans: [{ ...cellScan(alcove), off: true }] }))).toEqual(without);
    expect(without.adjustment.scans).toEqual([]);
  });
});
