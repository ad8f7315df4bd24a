// Against an independent polygon boolean library: polyclip-ts (Martinez-Rueda clipping).
import * as polyclip from 'polyclip-ts';
import { describe, expect, it } from 'vitest';
import { type Job, type Panel, type Point, parseJob, solve } from '../../src/core';
import { fullPlan, jobWith, noisy, plausibleAlcove } from '../simulate';
import { scenes } from '../simulate/scenes';

type Region = [number, number][][][];

const ring = (points: readonly Point[]): Region => [[points.map(([u, v]) => [u, v])]];
const rectangle = (left: number, bottom: number, right: number, top: number): Region =>
  ring([
    [left, bottom],
    [right, bottom],
    [right, top],
    [left, top],
  ]);
const sheetOf = ({ flat: { sheet } }: Panel): Region => rectangle(sheet.left, sheet.bottom, sheet.right, sheet.top);

function area(region: Region): number {
  const of = (points: [number, number][]): number =>
    Math.abs(
      points.reduce((sum, [u, v], i) => {
        const [nextU, nextV] = points[(i + 1) % points.length]!;
        return sum + u * nextV - nextU * v;
      }, 0),
    ) / 2;
  return region.reduce(
    (sum, [outer, ...holes]) => sum + of(outer!) - holes.reduce((all, hole) => all + of(hole), 0),
    0,
  );
}

const jobs: [string, Job][] = [
  ...scenes.map(({ file, job }): [string, Job] => {
    const parsed = parseJob(job);
    if (!parsed.ok) throw new Error(file);
    return [file, parsed.job];
  }),
  ...[11, 12, 13].map((seed): [string, Job] => [
    `alcove ${seed}`,
    jobWith(noisy(fullPlan(plausibleAlcove(seed), { seed }), seed), { fit: { flexible: seed === 12 } }),
  ]),
];

describe.each(jobs)('%s', (_, job) => {
  const panels = Object.values(solve(job).panels);

  it('cuts slivers that with the panel make up the sheet', () => {
    for (const panel of panels) {
      const outline = ring(panel.flat.outline);
      const cutOff = polyclip.difference(sheetOf(panel), outline);
      expect(panel.gaps).toEqual([]);
      expect(area(polyclip.difference(outline, sheetOf(panel)))).toBeLessThan(1);
      expect(area(polyclip.intersection(outline, sheetOf(panel)))).toBeCloseTo(panel.area, -1);
      const { width, height } = job.sheets[panel.name];
      expect(area(cutOff)).toBeCloseTo(width * height - panel.area, -1);
    }
  });

  it('states the width of the strip to cut off at each mark', () => {
    for (const panel of panels) {
      const cutOff = polyclip.difference(sheetOf(panel), ring(panel.flat.outline));
      for (const [name, edge] of Object.entries(panel.edges)) {
        if (name === 'top') continue;
        edge.marks.slice(1, -1).forEach(({ sliver, sheet: at }) => {
          expect(stripWidth(panel, cutOff, name, at)).toBeCloseTo(sliver, 1);
        });
      }
    }
  });
});

describe('a sheet that is too small', () => {
  const [, job] = jobs[1]!;
  const { panels, problems } = solve({
    ...job,
    sheets: { ...job.sheets, back: { width: 1524, height: 1600, grain: 'none' } },
  });
  const { back } = panels;
  const uncovered = polyclip.difference(ring(back.flat.outline), sheetOf(back));

  it('leaves gaps as large as the part of the panel outside it', () => {
    const { sheet } = back.flat;
    const points = uncovered.flat(2);
    const beyond = {
      left: Math.max(...points.map(([u]) => sheet.left - u)),
      right: Math.max(...points.map(([u]) => u - sheet.right)),
      bottom: Math.max(...points.map(([, v]) => sheet.bottom - v)),
    };
    for (const edge of ['left', 'right', 'bottom'] as const) {
      const stated = Math.max(0, ...back.gaps.filter((gap) => gap.edge === edge).map(({ max }) => max));
      expect(stated).toBeGreaterThan(0);
      expect(stated).toBeCloseTo(beyond[edge], 2);
      expect(back.edges[edge]!.sliver.min).toBeCloseTo(-beyond[edge], 2);
    }
  });

  it('is a problem of the job for each gap', () => {
    const stated = problems.filter(({ where }) => where === 'panels.back').map(({ howMuch }) => howMuch);
    for (const { max } of back.gaps) expect(stated).toContain(max);
  });
});

/** Width of the cut-off region across an edge at a place on the sheet, from a strip 0.01 mm wide. */
function stripWidth(panel: Panel, cutOff: Region, name: string, [u, v]: Point): number {
  const { left, right, bottom, top } = panel.flat.sheet;
  const middle = (left + right) / 2;
  const half = 0.005;
  const strip =
    name === 'bottom'
      ? rectangle(u - half, bottom - 1, u + half, (bottom + top) / 2 + 0.01)
      : u < middle
        ? rectangle(left - 1, v - half, middle, v + half)
        : rectangle(middle, v - half, right + 1, v + half);
  return area(polyclip.intersection(cutOff, strip)) / (2 * half);
}
