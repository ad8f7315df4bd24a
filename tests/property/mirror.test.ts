import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Panel, type Result, solve, type WallReport } from '../../src/core';
import { exactValue, fullPlan, mirrored, mirroredJob, mirroredReading, plausibleAlcove } from '../simulate';
import { choices, runs, seeds, surveyOf } from './arbitraries';

/** Least-squares steps taken in another order end this close, mm. */
const CLOSE = 5;

describe('a job seen in a mirror', () => {
  it('is read alike', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const alcove = plausibleAlcove(seed);
        const other = mirrored(alcove);
        for (const reading of fullPlan(alcove, { seed })) {
          if (reading.kind === 'plumb') continue;
          const image = mirroredReading(reading);
          if (image.kind !== 'plumb') expect(exactValue(other, image)).toBeCloseTo(reading.value, 8);
        }
      }),
      runs(20),
    );
  });

  it('gives the mirrored result', () => {
    fc.assert(
      fc.property(seeds, choices, (seed, chosen) => {
        const { job } = surveyOf(seed, chosen);
        const result = solve(job);
        const image = solve(mirroredJob(job));
        expectSamePanel(image.panels.left, result.panels.right);
        expectSamePanel(image.panels.right, result.panels.left);
        expectMirroredBack(image.panels.back, result.panels.back);
        expectSameWall(image.walls.left, result.walls.right);
        expectSameWall(image.walls.right, result.walls.left);
        expectSameWall(image.walls.back, result.walls.back);
        for (const [side, other] of [
          ['left', 'right'],
          ['right', 'left'],
        ] as const) {
          image.corners[side].angle.forEach(({ value, sd }, i) => {
            expect(value).toBeCloseTo(result.corners[other].angle[i]!.value, CLOSE);
            expect(sd).toBeCloseTo(result.corners[other].angle[i]!.sd, CLOSE);
          });
        }
        expect(image.adjustment.s0).toBeCloseTo(result.adjustment.s0!, 8);
        expect(image.adjustment.suspect?.id).toBe(result.adjustment.suspect?.id);
        expect(image.problems.length).toBe(result.problems.length);
        expectSameReadings(image, result);
        expectSameVerdicts(image, result);
      }),
      runs(25),
    );
  });
});

const turned: Record<string, 'back' | 'left' | 'right'> = { back: 'back', left: 'right', right: 'left' };

function expectSameVerdicts(image: Result, result: Result): void {
  const mirrorWords = (words: string): string => words.replace(/\b(left|right)\b/g, (side) => turned[side]!);
  for (const name of ['back', 'left', 'right'] as const) {
    const [one, other] = [image.walls[turned[name]!].verdict, result.walls[name].verdict];
    expect(one.verdict).toBe(other.verdict);
    expect(one.figures.map(({ judgement }) => judgement)).toEqual(other.figures.map(({ judgement }) => judgement));
    expect(one.because.map(mirrorWords).sort()).toEqual([...other.because].sort());
  }
  for (const side of ['left', 'right'] as const) {
    expect(image.corners[turned[side] as 'left' | 'right'].verdict.because).toEqual(
      result.corners[side].verdict.because,
    );
  }
  expect(image.rim.verdict.because.map(mirrorWords)).toEqual(result.rim.verdict.because);
}

function expectSameReadings(image: Result, result: Result): void {
  image.adjustment.readings.forEach((reading, i) => {
    const other = result.adjustment.readings[i]!;
    expect(reading.id).toBe(other.id);
    expect(reading.residual).toBeCloseTo(other.residual!, CLOSE);
    expect(reading.redundancy).toBeCloseTo(other.redundancy!, 6);
    expect(reading.flag).toBe(other.flag);
  });
}

function expectSamePanel(image: Panel, panel: Panel): void {
  expectSamePoints(image.outline, panel.outline);
  expectSamePoints(image.flat.outline, panel.flat.outline);
  for (const name of ['back', 'front', 'bottom', 'top'] as const) {
    const [edge, other] = [image.edges[name]!, panel.edges[name]!];
    expect(edge.method).toBe(other.method);
    expectSamePoints(
      edge.marks.map(({ u, v }) => [u, v]),
      other.marks.map(({ u, v }) => [u, v]),
    );
    edge.marks.forEach(({ sd, sliver }, i) => {
      expect(sd).toBeCloseTo(other.marks[i]!.sd, CLOSE);
      expect(sliver).toBeCloseTo(other.marks[i]!.sliver, CLOSE);
    });
  }
  expectSameHoles(image, panel, 1);
}

function expectMirroredBack(image: Panel, panel: Panel): void {
  expect(image.area).toBeCloseTo(panel.area, 0);
  for (const [name, otherName] of [
    ['left', 'right'],
    ['right', 'left'],
    ['bottom', 'bottom'],
    ['top', 'top'],
  ] as const) {
    const [edge, other] = [image.edges[name]!, panel.edges[otherName]!];
    expect(edge.marks.length).toBe(other.marks.length);
    expect(edge.sliver.max).toBeCloseTo(other.sliver.max, CLOSE);
    expect(edge.sliver.min).toBeCloseTo(other.sliver.min, CLOSE);
    if (name === 'left' || name === 'right') {
      expectSamePoints(
        edge.marks.map(({ u, v }) => [-u, v]),
        other.marks.map(({ u, v }) => [u, v]),
      );
    }
  }
  expectSameHoles(image, panel, -1);
}

function expectSameHoles(image: Panel, panel: Panel, turn: 1 | -1): void {
  expect(image.holes.length).toBe(panel.holes.length);
  image.holes.forEach((hole, i) => {
    expect(turn * hole.u).toBeCloseTo(panel.holes[i]!.u, CLOSE);
    expect(hole.v).toBeCloseTo(panel.holes[i]!.v, CLOSE);
    expect(hole.sd.u).toBeCloseTo(panel.holes[i]!.sd.u, CLOSE);
    expect(hole.edgeDistance).toBeCloseTo(panel.holes[i]!.edgeDistance, 3);
  });
}

function expectSameWall(image: WallReport, wall: WallReport): void {
  for (const name of ['plumb', 'plumbSd', 'bow', 'bowSd', 'bowAcross', 'bowAcrossSd', 'twistSd'] as const) {
    expect(image[name], name).toBeCloseTo(wall[name], CLOSE);
  }
  expect(Math.abs(image.twist)).toBeCloseTo(Math.abs(wall.twist), CLOSE);
}

function expectSamePoints(a: [number, number][], b: [number, number][]): void {
  expect(a.length).toBe(b.length);
  a.forEach(([u, v], i) => {
    expect(u).toBeCloseTo(b[i]![0], CLOSE);
    expect(v).toBeCloseTo(b[i]![1], CLOSE);
  });
}
