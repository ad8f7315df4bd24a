import { describe, expect, it } from 'vitest';
import { type Job, MM_PER_INCH, type Reading, solve, surveyPlan, type Unread, Z_95 } from '../../../../src/core';
import { adjust, standardDeviation } from '../../../../src/core/adjust';
import { candidateReadings, cutEdges, FINE, USUAL } from '../../../../src/core/plan';
import { walkingOrder } from '../../../../src/core/plan/walkingOrder';
import {
  exactValue,
  fullPlan,
  gapFromLine,
  jobWith,
  noisy,
  plausibleAlcove,
  type TrueAlcove,
  wallAt,
} from '../../../simulate';

const alcove = plausibleAlcove(9);

function taken(places: readonly Unread[], truth: TrueAlcove = alcove): Reading[] {
  return places.map((place, i): Reading => {
    const id = `r${i + 1}`;
    if (place.kind === 'plumb') {
      const line = wallAt(truth, place.wall, place.at, 0) + (place.wall === 'right' ? -50 : 50);
      const gap = (height: number) => ({ height, value: gapFromLine(truth, place.wall, place.at, height, line) });
      return { ...place, id, gaps: place.gaps.map(({ height }) => gap(height)) };
    }
    const named = { ...place, id };
    return { ...named, value: exactValue(truth, named) } as Reading;
  });
}

const worst95 = (job: Job): number => {
  const { alcove: found, covariance } = adjust(job);
  const edges = cutEdges(found, job);
  return Z_95 * Math.max(...edges.map(({ gradient }) => standardDeviation({ value: 0, gradient }, covariance)));
};

describe('nextReading', () => {
  it('keeps its promise: taken, it leaves the standard deviation that was told before', () => {
    const job = jobWith(noisy(fullPlan(alcove), 3));
    const { next } = solve(job).adjustment;
    expect(next!.sdAfter).toBeLessThan(next!.sdBefore);
    const more = { ...job, readings: [...job.readings, { ...taken([next!.reading])[0]!, id: 'next' }] };
    expect(worst95(job) / Z_95).toBeCloseTo(next!.sdBefore, 6);
    expect(worst95(more) / Z_95).toBeCloseTo(next!.sdAfter, 2);
  });

  it('leads from nothing to a drawn alcove, one reading at a time', () => {
    let job = jobWith([]);
    for (let step = 1; step <= 30; step++) {
      const { next } = solve(job).adjustment;
      if (next === null) break;
      job = { ...job, readings: [...job.readings, { ...taken([next.reading])[0]!, id: `n${step}` }] };
    }
    expect(worst95(job)).toBeLessThan(3);
  });
});

describe('candidateReadings', () => {
  const { alcove: drawn } = adjust(jobWith([]));

  it('are in reach: above the rim, below the top, between the corners, inside the apron', () => {
    for (const display of ['in', 'mm'] as const) {
      const step = display === 'in' ? MM_PER_INCH : 10;
      const job = jobWith([], { display });
      for (const reading of candidateReadings(drawn, job, FINE)) {
        const places =
          reading.kind === 'straightedge' || reading.kind === 'diagonal' ? [reading.from, reading.to] : [reading];
        for (const place of places) {
          const heights =
            'gaps' in place ? place.gaps.map(({ height }) => height) : 'height' in place ? [place.height] : [];
          for (const height of heights) {
            expect(height).toBeGreaterThan(-750);
            expect(height).toBeLessThanOrEqual(job.fit.top);
            expect(Math.abs(height / step - Math.round(height / step))).toBeLessThan(1e-6);
          }
          if ('at' in place) expect(Math.abs(place.at)).toBeLessThan(762);
        }
      }
    }
  });

  it('are fewer for the next reading than for a plan', () => {
    const job = jobWith([]);
    expect(candidateReadings(drawn, job, USUAL).length).toBeLessThan(110);
    expect(candidateReadings(drawn, job, FINE).length).toBeGreaterThan(150);
  });
});

describe('surveyPlan', () => {
  const job = jobWith([], { levelAboveFloor: 1200 });
  const plan = surveyPlan(job);
  const places = plan.map(({ reading }) => reading);

  it('brings every cut edge within 1/32 in, with fewer than 75 readings', () => {
    expect(plan.at(-1)!.after).toBeLessThanOrEqual(MM_PER_INCH / 32);
    expect(plan.at(-1)!.settled).toBe(1);
    expect(plan.length).toBeLessThan(75);
    expect(plan.map(({ step }) => step)).toEqual(plan.map((_, i) => i + 1));
  });

  it('holds in an alcove that is measured by it', () => {
    expect(worst95({ ...job, readings: noisy(taken(places), 4) })).toBeLessThan((1.05 * MM_PER_INCH) / 32);
  });

  it('cannot spare any of its readings', () => {
    const whole = taken(places);
    for (let i = 0; i < whole.length; i += 7) {
      expect(worst95({ ...job, readings: whole.toSpliced(i, 1) })).toBeGreaterThan((0.999 * MM_PER_INCH) / 32);
    }
  });

  it('leaves no reading unchecked', () => {
    const { readings } = solve({ ...job, readings: noisy(taken(places), 5) }).adjustment;
    for (const { redundancy } of readings) expect(redundancy).toBeGreaterThan(0.2);
  });

  it('goes in two rounds, each around the alcove, the first enough to draw it', () => {
    const turn = plan.findIndex(({ round }) => round === 2);
    expect(plan.slice(0, turn).every(({ round }) => round === 1)).toBe(true);
    expect(plan.slice(turn).every(({ round }) => round === 2)).toBe(true);
    expect(plan[turn - 1]!.after).toBeLessThanOrEqual((4 * MM_PER_INCH) / 32);
    expect(turn).toBeLessThan(plan.length / 2);
    for (const round of [1, 2]) {
      const mine = plan.filter((each) => each.round === round).map(({ reading }) => ({ reading: reading as Reading }));
      expect(walkingOrder(mine)).toEqual(mine);
    }
  });

  it('tells the ± before and after each', () => {
    plan.forEach(({ before, after }, i) => {
      expect(after).toBeLessThanOrEqual(before + 1e-9);
      if (i > 0) expect(before).toBe(plan[i - 1]!.after);
    });
  });

  it('is shorter for a coarser target', () => {
    expect(surveyPlan(job, { target: MM_PER_INCH / 16 }).length).toBeLessThan(plan.length / 2);
  });

  it('gives what helps where the target is out of reach', () => {
    const poor = surveyPlan(
      jobWith([], { instruments: { tape: { sd: 12 }, rule: { sd: 12 }, straightedge: { sd: 12 } } }),
    );
    expect(poor.at(-1)!.after).toBeGreaterThan(MM_PER_INCH / 32);
    expect(poor.length).toBeGreaterThan(75);
  });
});

describe('walkingOrder', () => {
  const reading = (place: object): { reading: Reading } => ({ reading: { id: 'x', value: 1, ...place } as Reading });

  it('starts with the drop at the plumb line, goes on at the control lines, corners from the top, and ends at the front edges', () => {
    const top = reading({ kind: 'tape-to-corner', side: 'left', height: 900 });
    const foot = reading({ kind: 'tape-to-corner', side: 'left', height: -600 });
    const right = reading({ kind: 'tape-to-corner', side: 'right', height: 900 });
    const drop = reading({ kind: 'tape-to-rim', wall: 'back', at: 0 });
    const beside = reading({ kind: 'tape-to-rim', wall: 'back', at: 300 });
    const line = reading({ kind: 'plumb', wall: 'back', at: 0, gaps: [] });
    const span = reading({ kind: 'span', height: 0, at: 400 });
    const depth = reading({ kind: 'depth', wall: 'left', height: 0 });
    expect(walkingOrder([depth, span, line, right, beside, drop, foot, top])).toEqual([
      drop,
      top,
      foot,
      right,
      beside,
      line,
      span,
      depth,
    ]);
  });

  it('goes along the rim from left to right: in along the left wall, along the back, out along the right', () => {
    const drops = [
      reading({ kind: 'tape-to-rim', wall: 'left', at: 700 }),
      reading({ kind: 'tape-to-rim', wall: 'left', at: 50 }),
      reading({ kind: 'tape-to-rim', wall: 'back', at: -600 }),
      reading({ kind: 'tape-to-rim', wall: 'back', at: 600 }),
      reading({ kind: 'tape-to-rim', wall: 'right', at: 50 }),
      reading({ kind: 'tape-to-rim', wall: 'right', at: 700 }),
    ];
    expect(walkingOrder([...drops].reverse())).toEqual(drops);
  });
});
