import { readFileSync } from 'node:fs';
import { expect, type Page, test } from '@playwright/test';
import { parseJobText, solve } from '../../src/core';
import { drawnHeat } from '../../src/scene/heat/drawn-heat';
import { type Bytes, scaleColours } from '../../src/scene/heat/scale';
import { bundled } from './bundle';
import type { Look, Seen } from './heat/stage';

const parsed = parseJobText(readFileSync(new URL('../../scenes/skewed-bowed-wet-wall.json', import.meta.url), 'utf8'));
if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
const { job } = parsed;
const result = solve(job);
const scale = scaleColours();

async function read(page: Page, look: Look, every: number, reference: 'plumb' | 'flat', column: number | null = null) {
  const { walls } = drawnHeat(result, job, reference, 1);
  await page.setContent('<!doctype html><title>drawing</title>');
  await page.addScriptTag({ content: await bundled(new URL('./heat/stage.ts', import.meta.url)) });
  const seen: Seen[] = await page.evaluate(
    ([meshes, how, apart, only]) => window.heatStage(meshes).read(how, apart, only),
    [walls.map(({ mesh }) => mesh), look, every, column] as const,
  );
  return seen.map((pixel) => ({ ...pixel, value: walls[pixel.wall]!.field.deviation(pixel.at, pixel.height) }));
}

/** The share of the range that a colour stands for, and how far it is from the scale's own. */
function decoded(colour: Bytes): { share: number; off: number } {
  const offs = scale.map((each) => Math.hypot(...each.map((byte, i) => byte - colour[i]!)));
  const i = offs.indexOf(Math.min(...offs));
  return { share: (2 * i) / (scale.length - 1) - 1, off: offs[i]! };
}

const look: Look = { range: 20, interval: 4, assumed: false, distance: 3000 };
/** Two entries of the scale, mm. */
const QUANTISATION = (2 * 2 * look.range) / (scale.length - 1);
/** Pixels nearer to a contour than this, in intervals, may carry its ink. */
const CLEAR = 0.2;
const fromContour = (value: number) => Math.abs(value / look.interval - Math.round(value / look.interval));

for (const reference of ['plumb', 'flat'] as const) {
  test(`colours off ${reference} read back as the model's own figures`, async ({ page }) => {
    const clear = (await read(page, look, 9, reference)).filter(({ value }) => fromContour(value) > CLEAR);
    expect(clear.length).toBeGreaterThan(800);
    for (const wall of [0, 1, 2]) expect(clear.filter((pixel) => pixel.wall === wall).length).toBeGreaterThan(20);
    for (const { colour, value } of clear) {
      const { share, off } = decoded(colour);
      expect(off).toBeLessThan(3);
      expect(Math.abs(share * look.range - value)).toBeLessThan(QUANTISATION);
    }
  });
}

test('contour lines are as wide on the screen from near as from far', async ({ page }) => {
  for (const distance of [2200, 4400]) {
    const column = (await read(page, { ...look, distance }, 1, 'plumb', 600)).filter(({ wall }) => wall === 0);
    const inked = column.map(({ colour }) => decoded(colour).off > 25);
    const runs = inked
      .map((ink) => (ink ? '#' : ' '))
      .join('')
      .match(/#+/g)!;
    const onContour = column.filter((_, i) => inked[i]);
    for (const { value } of onContour) expect(fromContour(value)).toBeLessThan(CLEAR);
    for (const run of runs) expect(run.length).toBeLessThanOrEqual(4);
    // as many lines as the model crosses, the thick one for true among them
    const steps = column.map(({ value }) => Math.floor(value / look.interval));
    const crossed = steps.filter((step, i) => i > 0 && step !== steps[i - 1]).length;
    expect(runs.length).toBe(crossed);
  }
});

test('what is assumed, or known no better than a step, is faded and hatched', async ({ page }) => {
  for (const unsure of [
    { ...look, assumed: true },
    { ...look, interval: 0.01 },
  ]) {
    const seen = await read(page, unsure, 11, 'plumb');
    const lightness = ({ colour }: Seen) => colour[0] + colour[1] + colour[2];
    const faded = seen.filter(({ value, colour }) => Math.abs(value) > 6 && decoded(colour).off > 3);
    expect(faded.length).toBeGreaterThan(0.9 * seen.filter(({ value }) => Math.abs(value) > 6).length);
    const level = seen.filter(({ value }) => Math.abs(value) < 2).map(lightness);
    expect(Math.max(...level) - Math.min(...level)).toBeGreaterThan(40);
  }
});
