import { describe, expect, it } from 'vitest';
import { adjust, assumedParameters, kindReports, standardDeviation } from '../../../../src/core/adjust';
import { adjustmentReport } from '../../../../src/core/adjustmentReport';
import { constant } from '../../../../src/core/dual';
import type { Job, Reading } from '../../../../src/core/job-file';
import { fullPlan, jobWith, noisy, plausibleAlcove, randomFrom, withBlunder, withSd } from '../../../simulate';

const survey = (seed: number): Reading[] => noisy(fullPlan(plausibleAlcove(seed)), seed + 500);
const parameterOf = (job: Job, name: string) =>
  adjustmentReport(adjust(job), job).parameters.find((parameter) => parameter.name === name)!;

describe('adjust', () => {
  it('draws from no reading at all, everything assumed', () => {
    const adjustment = adjust(jobWith([]));
    expect(assumedParameters(adjustment).every(Boolean)).toBe(true);
    expect(adjustment.alcove.right.value(0, 0) - adjustment.alcove.left.value(0, 0)).toBeCloseTo(1524, 6);
    expect(adjustment.solution.dof).toBe(0);
    expect(adjustment.s0).toBeNull();
    expect(adjustment.examination.search.blunders).toEqual([]);
  });

  it('draws from any part of a survey, and its redundancy numbers add up', () => {
    const all = survey(3);
    const random = randomFrom(8);
    for (let size = 1; size <= all.length; size += 4) {
      const job = jobWith(all.filter(() => random.between(0, all.length) < size));
      const { solution, covariance } = adjust(job);
      expect(solution.x.every(Number.isFinite)).toBe(true);
      expect(covariance.diagonal().every((variance) => variance > 0)).toBe(true);
      expect(solution.redundancy.reduce((sum, each) => sum + each, 0)).toBeCloseTo(solution.dof, 7);
    }
  });

  it('takes what no reading touches for assumed, and what readings settle not', () => {
    const job = jobWith(survey(4).filter((reading) => !('wall' in reading && reading.wall === 'left')));
    const { assumed } = adjustmentReport(adjust(job), job);
    expect(assumed).toContain('front edge of the left wall: position');
    expect(assumed).not.toContain('right wall: position');
    expect(assumed).not.toContain('front edge of the right wall: position');
  });

  it('keeps readings that are off out, but in its list', () => {
    const readings = survey(5);
    const off = readings.map((reading, i) => (i === 3 ? { ...reading, off: true } : reading));
    const [with3, without3] = [adjust(jobWith(off)), adjust(jobWith(readings.toSpliced(3, 1)))];
    expect(with3.rowOf[3]).toBeNull();
    expect(Array.from(with3.solution.x)).toEqual(Array.from(without3.solution.x));
  });

  it('states a standard deviation that readings of half the error halve', () => {
    const exact = fullPlan(plausibleAlcove(6));
    const sds = [0.4, 0.2].map((sd) => {
      const { alcove, covariance } = adjust(
        jobWith(withSd(exact, sd), {
          priors: { plumb: 200, square: 200, twist: 200, bow: 200, rimLevel: 200, frontPlumb: 200 },
        }),
      );
      return standardDeviation(alcove.left.at(constant(300), constant(200)), covariance);
    });
    expect(sds[0]! / sds[1]!).toBeCloseTo(2, 2);
  });
});

describe('a rough job', () => {
  /** Every error `times` what the instrument allows. */
  const rough = (seed: number, times: number): Reading[] => {
    const exact = fullPlan(plausibleAlcove(seed));
    const erring = noisy(exact, seed + 900);
    const more = (value: number, right: number): number => right + times * (value - right);
    return erring.map((reading, i): Reading => {
      const right = exact[i]!;
      if (reading.kind === 'plumb' && right.kind === 'plumb') {
        const gaps = reading.gaps.map((gap, k) => ({ ...gap, value: more(gap.value, right.gaps[k]!.value) }));
        return { ...reading, gaps };
      }
      if (reading.kind === 'plumb' || right.kind === 'plumb') throw new Error('readings out of order');
      return { ...reading, value: more(reading.value, right.value) };
    });
  };

  it('has its standard deviations scaled up until the readings agree', () => {
    const scales = [11, 12, 13, 14, 15].map((seed) => {
      const { supposition, examination } = adjust(jobWith(rough(seed, 2.5)));
      expect(examination.test).toBe('tau');
      expect(examination.search.blunders).toEqual([]);
      return supposition.scale;
    });
    const mean = scales.reduce((sum, each) => sum + each, 0) / scales.length;
    expect(mean).toBeGreaterThan(2.1);
    expect(mean).toBeLessThan(2.8);
  });

  it('that is as good as its instruments, or better, has them as they are', () => {
    for (const times of [0.1, 1]) expect(adjust(jobWith(rough(21, times))).supposition.scale).toBe(1);
  });

  it('shows in the kind of reading that is rough', () => {
    const half = rough(16, 3);
    const fine = survey(16);
    const mixed = fine.map((reading, i) =>
      reading.kind === 'tape-to-corner' ? { ...half[i]!, value: (half[i] as typeof reading).value } : reading,
    ) as Reading[];
    const kinds = kindReports(adjust(jobWith(mixed)));
    const factorOf = (kind: string): number => kinds.find((each) => each.kind === kind)!.factor;
    expect(factorOf('tape-to-corner')).toBeGreaterThan(1.5 * factorOf('plumb'));
    expect(kinds.find((each) => each.kind === 'tape-to-corner')!.probability).toBeLessThan(0.01);
  });
});

describe('an uneven wall', () => {
  const hump = { wall: 'right' as const, at: 380, height: 150, rise: 12, radius: 300 };

  it('gets a spline, follows its hump and has no reading named', () => {
    const alcove = { ...plausibleAlcove(31), humps: [hump] };
    const job = jobWith(noisy(fullPlan(alcove), 31));
    const adjustment = adjust(job);
    expect(adjustment.supposition.uneven.map(({ wall }) => wall)).toEqual(['right']);
    expect(adjustment.examination.search.blunders).toEqual([]);
    const plain = adjust(jobWith(noisy(fullPlan(plausibleAlcove(31)), 31)));
    const rise = plain.alcove.right.value(380, 150) - adjustment.alcove.right.value(380, 150);
    expect(rise).toBeGreaterThan(6);
    expect(adjustmentReport(adjustment, job).uneven).toEqual(['right']);
  });

  it('on the back wall leaves the control lines where they are', () => {
    const alcove = { ...plausibleAlcove(32), humps: [{ ...hump, wall: 'back' as const, at: 300 }] };
    const { alcove: found, supposition } = adjust(jobWith(noisy(fullPlan(alcove), 32)));
    expect(supposition.uneven.map(({ wall }) => wall)).toEqual(['back']);
    expect(found.back.value(0, 0)).toBe(0);
    expect(found.back.gradient(0, 0)[0]).toBeCloseTo(0, 15);
  });

  it('is not made out of even walls, nor out of a misread reading', () => {
    for (let seed = 41; seed <= 60; seed++) {
      expect(adjust(jobWith(survey(seed))).supposition.uneven).toEqual([]);
      const misread = adjust(jobWith(withBlunder(survey(seed), 'plumb-right-2/1', 12.7)));
      expect(misread.supposition.uneven).toEqual([]);
    }
  });
});

describe('a wall farther out than walls are', () => {
  it('is what the readings show, its prior let go and no reading blamed', () => {
    const plausible = plausibleAlcove(71);
    const leaning = { ...plausible, right: { ...plausible.right, y: 0.06 } };
    const job = jobWith(noisy(fullPlan(leaning), 71));
    const { suspects, beyondPrior } = adjustmentReport(adjust(job), job);
    expect(suspects).toEqual([]);
    expect(beyondPrior).toEqual(['right wall: out of plumb']);
    const { value, sd } = parameterOf(job, 'right.plumb');
    expect(Math.abs(value - 0.06)).toBeLessThan(3 * sd);
  });
});
