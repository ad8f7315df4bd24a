import { describe, expect, it } from 'vitest';
import { type BedReport, type Contact, type JobInput, solve } from '../../../../src/core';
import { fullPlan, jobWith, noisy, type TrueAlcove, withSd } from '../../../simulate';

/** Walls in the planes of a true box but for the back wall's bow across, 1/mm; hollow where positive is towards the room. */
const boxWith = (bow: number): TrueAlcove => ({
  back: { y: 0, xy: 0, xx: bow, yy: 0 },
  left: { c: -762, y: 0, z: 0, yz: 0, yy: 0, zz: 0 },
  right: { c: 762, y: 0, z: 0, yz: 0, yy: 0, zz: 0 },
  rim: { c: -700, x: 0, z: 0, xx: 0, zz: 0 },
  front: { left: { f0: 760, f1: 0 }, right: { f0: 760, f1: 0 } },
  humps: [],
});
const HOLLOW = 14e-6;

const bedOf = (
  bow: number,
  choices: Partial<JobInput> = {},
  sd = 0.01,
): { bed: BedReport; result: ReturnType<typeof solve> } => {
  const result = solve(jobWith(withSd(fullPlan(boxWith(bow)), sd), choices));
  return { bed: result.bedding.back, result };
};
const inside = ({ map }: BedReport): number => map.value[10]![10]!;

describe('how a sheet sits', () => {
  it('has an even bed, no hollow and no shim in a true box', () => {
    const { bed, result } = bedOf(0);
    expect(bed.thickest.value).toBeCloseTo(2, 1);
    expect(bed.hollows).toEqual([]);
    expect(bed.shims.list).toEqual([]);
    expect(bed.strain.max).toBe(0);
    expect(result.problems).toEqual([]);
  });

  it('leaves the whole hollow behind a rigid sheet, and says how to shim it', () => {
    const { bed, result } = bedOf(HOLLOW, { bedding: { reach: 6 } });
    const half = (bed.map.at.at(-1)! - bed.map.at[0]!) / 2;
    const depth = HOLLOW * half ** 2;
    expect(bed.how).toBe('rigid');
    expect(bed.contacts).toHaveLength(3);
    expect(inside(bed)).toBeCloseTo(2 + depth, 1);
    // beyond a reach of 6 from a bed of 2: where the hollow is over 4
    const width = 2 * Math.sqrt(half ** 2 - 4 / HOLLOW);
    const height = bed.map.height.at(-1)! - bed.map.height[0]!;
    expect(bed.hollows).toHaveLength(1);
    expect(bed.hollows[0]!.area / (width * height)).toBeCloseTo(1, 1);
    expect(bed.hollows[0]!.worst).toBeCloseTo(2 + depth, 1);
    const problem = result.problems.find(({ where }) => where === 'panels.back');
    expect(problem?.what).toContain('thicker in places than the adhesive reaches');
    expect(problem?.howMuch).toBeCloseTo(2 + depth, 1);
    for (const { u, thickness } of bed.shims.list) expect(thickness).toBeCloseTo(depth - HOLLOW * u * u, 1);
    expect(bed.shims.list.length).toBeGreaterThan(6);
  });

  it('bends a sheet as stiff as stated into the hollow, with strain t/2R where it follows it', () => {
    const { bed, result } = bedOf(HOLLOW, { bedding: { stiffness: 'stated' } });
    expect(bed.how).toBe('bent');
    expect(bed.hollows).toEqual([]);
    expect(inside(bed)).toBeCloseTo(2, 1);
    expect(bed.strain.max).toBeGreaterThan(0.9 * 3 * 2 * HOLLOW);
    expect(bed.strain.radius).toBeCloseTo(3 / bed.strain.max, 6);
    expect(bed.convergence).toMatchObject({ converged: true, columns: 24, rows: 24 });
    expect(bed.convergence!.energyChange).toBeLessThan(0.03);
    expect(result.problems).toEqual([]);
    // a sheet balances itself: what some dots pull, others are pressed with
    const pulls = bed.springBack.dots.map(({ pull }) => pull);
    expect(pulls).toHaveLength(result.materials.adhesive.back.dots.length);
    expect(Math.abs(pulls.reduce((sum, pull) => sum + pull, 0))).toBeLessThan(1e-3 * bed.springBack.total);
    expect(bed.springBack.largest!.pull).toBeGreaterThan(0);
  });

  it('has the outer dots pull as the ends of a beam on many supports, where the sheet follows a hump', () => {
    const { bed } = bedOf(-HOLLOW, { fit: { flexible: true } });
    const { dots } = bed.springBack;
    const outer = Math.min(...dots.map(({ u }) => u));
    const column = dots.filter(({ u }) => u < outer + 1);
    const next = Math.min(...dots.filter(({ u }) => u > outer + 1).map(({ u }) => u));
    const stiffness = (3000 * 6 ** 3) / (12 * (1 - 0.35 ** 2));
    const rows = column.map(({ v }) => v).sort((a, b) => a - b);
    const spacing = rows[2]! - rows[1]!;
    // Away from the corners: 1.268 Dκ/s for each mm of row, from the three-moment equation of a beam on even supports.
    const middle = column.filter(({ v }) => v > rows[3]! && v < rows.at(-4)!);
    const mean = middle.reduce((sum, { pull }) => sum + pull, 0) / middle.length;
    const ratio = mean / ((1.268 * stiffness * 2 * HOLLOW * spacing) / (next - outer));
    expect(ratio).toBeGreaterThan(0.92);
    expect(ratio).toBeLessThan(1.08);
  });

  it('says where a sheet would be over-bent', () => {
    const { bed, result } = bedOf(HOLLOW, { fit: { flexible: true }, bedding: { strainLimit: 0.0001 } });
    expect(bed.how).toBe('follows');
    expect(bed.strain.max).toBeCloseTo(3 * 2 * HOLLOW, 6);
    expect(bed.strain.overBent).toEqual([]);
    const tight = solve(
      jobWith(withSd(fullPlan(boxWith(4 * HOLLOW)), 0.01), {
        fit: { flexible: true },
        bedding: { strainLimit: 0.0001 },
      }),
    );
    expect(tight.bedding.back.strain.overBent[0]!.worst).toBeCloseTo(3 * 8 * HOLLOW, 5);
    expect(tight.problems.map(({ what }) => what).join()).toContain('more than its limit of 0.01 %');
    expect(result.problems).toEqual([]);
  });

  it("has a ± that grows with the survey's", () => {
    const [fine, rough] = [0.1, 0.4].map((sd) => bedOf(HOLLOW, {}, sd).bed.map.sd[10]![10]!) as [number, number];
    expect(fine).toBeGreaterThan(0.02);
    expect(rough / fine).toBeGreaterThan(2);
  });

  it('says how far its strain, what dots hold and where it touches are open', () => {
    for (const choices of [{ bedding: { stiffness: 'stated' as const } }, { fit: { flexible: true } }]) {
      const [fine, rough] = [0.1, 0.4].map((sd) => bedOf(HOLLOW, choices, sd).bed) as [BedReport, BedReport];
      expect(fine.strain.sd).toBeGreaterThan(0);
      expect(rough.strain.sd / fine.strain.sd).toBeGreaterThan(2);
      if (fine.how !== 'bent') continue;
      expect(rough.springBack.totalSd / fine.springBack.totalSd).toBeGreaterThan(2);
      for (const { sd } of fine.springBack.dots) expect(sd).toBeGreaterThan(0);
    }
    const [fine, rough] = [0.1, 0.8].map((sd) => bedOf(HOLLOW, {}, sd).bed.contacts) as [Contact[], Contact[]];
    const widest = (contacts: Contact[]): number =>
      Math.max(...contacts.map(({ from, to }) => Math.max(to[0] - from[0], to[1] - from[1])));
    expect(widest(rough)).toBeGreaterThan(0);
    expect(widest(rough)).toBeGreaterThanOrEqual(widest(fine));
    for (const { u, v, from, to } of rough) {
      expect(u >= from[0] && u <= to[0] && v >= from[1] && v <= to[1]).toBe(true);
    }
  });

  it('has a ± of strain that other surveys of the same wall bear out', () => {
    const strains = Array.from({ length: 16 }, (_, seed) => {
      const readings = noisy(withSd(fullPlan(boxWith(HOLLOW)), 0.3), seed + 1);
      return solve(jobWith(readings, { fit: { flexible: true } })).bedding.back.strain;
    });
    const mean = strains.reduce((sum, { max }) => sum + max, 0) / strains.length;
    const spread = Math.sqrt(strains.reduce((sum, { max }) => sum + (max - mean) ** 2, 0) / (strains.length - 1));
    expect(spread / strains[0]!.sd).toBeGreaterThan(0.5);
    expect(spread / strains[0]!.sd).toBeLessThan(1.8);
  });

  it('stands flat and plumb on its shims', () => {
    const { bed } = bedOf(HOLLOW, { bedding: { edges: 'shimmed', shimTo: 'plumb' } });
    expect(bed.how).toBe('shimmed');
    expect(bed.lean).toBeCloseTo(0, 9);
    expect(bed.shims.lean).toBeCloseTo(0, 9);
    expect(bed.strain.max).toBe(0);
  });
});
