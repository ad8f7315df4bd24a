import { readdirSync, readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Job, parseJobText, type Reading } from '../../../src/core/job-file';
import type { Result } from '../../../src/core/result';
import { solve } from '../../../src/core/solve';
import { fullPlan, jobWith, noisy, plausibleAlcove } from '../../simulate';
import { anyJob, slippedJob } from './anyJob';

const PANELS = ['back', 'left', 'right'] as const;

/** Places in a value that JSON would lose or change. */
function notJson(value: unknown, path = 'result'): string[] {
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return [];
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (Array.isArray(value)) return value.flatMap((each, i) => notJson(each, `${path}[${i}]`));
  if (typeof value === 'object' && Object.getPrototypeOf(value) === Object.prototype) {
    return Object.entries(value).flatMap(([key, each]) => notJson(each, `${path}.${key}`));
  }
  return [`${path} is ${typeof value === 'object' ? value.constructor.name : typeof value}`];
}

/** The result of a job, checked to be whole. */
function solved(job: Job): Result {
  const before = structuredClone(job);
  const result = solve(job);
  expect(job).toEqual(before);
  expect(notJson(result)).toEqual([]);
  const text = JSON.stringify(result);
  expect(JSON.stringify(JSON.parse(text))).toBe(text);
  for (const name of PANELS) {
    const { outline, flat, area } = result.panels[name];
    expect(outline.length).toBeGreaterThanOrEqual(64);
    expect(area).toBeGreaterThan(0);
    for (const point of flat.outline) expect(Math.hypot(...point)).toBeLessThan(20_000);
  }
  return result;
}

const whats = ({ problems }: Result): string[] => problems.map(({ where, what }) => `${where}: ${what}`);
const corner = (id: string, value: number, height = 0): Reading => ({
  id,
  kind: 'tape-to-corner',
  side: 'left',
  height,
  value,
});

describe('notJson', () => {
  it('finds what JSON would lose', () => {
    class Other {}
    const value = {
      a: [1, Number.NaN],
      b: { c: undefined },
      d: Number.POSITIVE_INFINITY,
      e: new Other(),
      f: () => 1,
      g: Float64Array.of(1),
    };
    expect(notJson(value)).toEqual([
      'result.a[1] is NaN',
      'result.b.c is undefined',
      'result.d is Infinity',
      'result.e is Other',
      'result.f is function',
      'result.g is Float64Array',
    ]);
    expect(notJson({ a: [null, 'x', true, -1.5, {}] })).toEqual([]);
  });
});

describe('solve', () => {
  const scenes = new URL('../../../scenes/', import.meta.url);

  it.each(readdirSync(scenes).filter((file) => file.endsWith('.json')))(
    'solves scenes/%s, the same every time',
    (file) => {
      const parsed = parseJobText(readFileSync(new URL(file, scenes), 'utf8'));
      if (!parsed.ok) throw new Error(parsed.faults[0]!.message);
      const first = solved(parsed.job);
      expect(JSON.stringify(solve(structuredClone(parsed.job)))).toBe(JSON.stringify(first));
    },
  );

  it('draws an alcove that nobody has measured, every size assumed', () => {
    const result = solved(jobWith([]));
    expect(result.adjustment.readings).toEqual([]);
    expect(result.adjustment.parameters.every(({ assumed }) => assumed)).toBe(true);
    expect(result.adjustment.s0).toBeNull();
    expect(result.panels.back.area).toBeCloseTo(1520 * 1727, -3);
    expect(result.panels.back.worst95).toBeGreaterThan(100);
  });

  it('takes a single reading of any kind', () => {
    for (const reading of fullPlan(plausibleAlcove(5))) {
      const { readings } = solved(jobWith([reading])).adjustment;
      expect(readings.length).toBeGreaterThan(0);
      for (const { id } of readings) expect(id.startsWith(reading.id)).toBe(true);
    }
  });

  it('takes readings that contradict each other and says so', () => {
    const result = solved(jobWith([corner('a', 700), corner('b', 900), corner('c', 702), corner('d', 699.5)]));
    expect(result.adjustment.suspect).toMatchObject({ id: 'b' });
    const torn = solved(jobWith([corner('a', 100), corner('b', 3900)]));
    const { suspect } = torn.adjustment;
    expect([suspect!.id, ...suspect!.alternatives].sort()).toEqual(['a', 'b']);
    expect(suspect!.located).toBe(false);
  });

  it('takes readings that are all off', () => {
    const off = fullPlan(plausibleAlcove(2)).map((reading) => ({ ...reading, off: true }));
    const result = solved(jobWith(off));
    expect(result.panels.back.outline).toEqual(solve(jobWith([])).panels.back.outline);
  });

  it('reports a top below the rim', () => {
    const result = solved(jobWith(fullPlan(plausibleAlcove(3)), { fit: { top: -900 } }));
    expect(whats(result)).toContain(
      'panels.left: the top is no higher than the rim; raise the top or check the drops to the rim',
    );
  });

  it('reports sheets that are far too small, at every edge that they miss', () => {
    const tiny = { width: 100, height: 100 };
    const result = solved(jobWith(fullPlan(plausibleAlcove(4)), { sheets: { back: tiny, left: tiny, right: tiny } }));
    for (const name of PANELS) {
      const { gaps } = result.panels[name];
      expect(new Set(gaps.map(({ edge }) => edge))).toEqual(
        new Set([...(name === 'back' ? ['left', 'right'] : ['back', 'front']), 'bottom']),
      );
      for (const { edge } of gaps)
        expect(whats(result)).toContain(
          `panels.${name}: the sheet falls short at the ${edge} edge; take a larger sheet or lay it otherwise`,
        );
    }
  });

  it('reports walls that no readings should make, and still draws', () => {
    const heights = [-600, 0, 900];
    const readings = heights.map((height, i) => corner(`c${i}`, 760 + [0, 900, 2000][i]!, height));
    const result = solved(jobWith(readings));
    expect(whats(result)).toContain(
      'walls.left: the readings put the left wall where none can be; look for one that was misread or mistyped',
    );
  });

  it('takes impossible readings whose standard deviations differ by eight powers of ten', () => {
    const readings: Reading[] = [
      { id: 'a', sd: 0.0011, kind: 'span', height: -3000, at: 0, value: 6000 },
      { id: 'b', sd: 0.0011, kind: 'depth', wall: 'left', height: 3000, value: 1e-300 },
      {
        id: 'c',
        sd: 92,
        kind: 'diagonal',
        from: { side: 'right', height: 0 },
        to: { side: 'left', height: 2395 },
        value: 0.07,
      },
      {
        id: 'd',
        kind: 'plumb',
        wall: 'right',
        at: 2103,
        gaps: [
          { height: -2999.894, value: 600, sd: 0.0005 },
          { height: -3000, value: 0, sd: 86 },
          { height: -2999.957, value: 0, sd: 1e-6 },
          { height: -2999.98, value: 0, sd: 0.08 },
        ],
      },
    ];
    expect(solved(jobWith(readings)).problems.length).toBeGreaterThan(0);
  });

  it('takes hundreds of readings', () => {
    const alcove = plausibleAlcove(6);
    const readings = Array.from({ length: 4 }, (_, k) =>
      noisy(fullPlan(alcove, { seed: k + 1 }), k + 1).map((reading) => ({ ...reading, id: `${reading.id}-${k}` })),
    ).flat();
    expect(readings.length).toBeGreaterThan(200);
    expect(solved(jobWith(readings)).panels.back.worst95).toBeLessThan(1.5);
  }, 60_000);

  it('never throws and never loses a number, whatever the job', () => {
    fc.assert(
      fc.property(anyJob, (job) => void solved(job)),
      { seed: 1, numRuns: 12, endOnFailure: true },
    );
  }, 240_000);

  it('never throws and never loses a number when a few values of a good job slip', () => {
    fc.assert(
      fc.property(slippedJob, (job) => void solved(job)),
      { seed: 2, numRuns: 12, endOnFailure: true },
    );
  }, 240_000);
});
