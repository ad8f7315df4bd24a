import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { parseJobText, solve } from '../../src/core';
import { drawnHeat } from '../../src/scene/heat/drawn-heat';
import { browserLaunch } from '../browser/browser';
import { bundled } from '../browser/bundle';
import type { BenchOptions, Row } from './bench';
import type { DrawTimes } from './draw/stage';
import { share } from './time';

export const name = 'draw';
export const about =
  'One frame of the heat map’s walls in a real browser, 1024 × 768, drawn in software, against a bare three.js scene of the same triangles, in turns.';

const ROUNDS = 60;

export async function run({ count = ROUNDS }: BenchOptions): Promise<Row[]> {
  const file = new URL('../../scenes/skewed-bowed-wet-wall.json', import.meta.url);
  const parsed = parseJobText(readFileSync(file, 'utf8'));
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const { walls } = drawnHeat(solve(parsed.job), parsed.job, 'plumb', 5);
  const browser = await chromium.launch(browserLaunch());
  try {
    const page = await browser.newPage();
    await page.addScriptTag({ content: await bundled(new URL('./draw/stage.ts', import.meta.url)) });
    const times: DrawTimes = await page.evaluate(([meshes, rounds]) => window.drawStage(meshes, rounds), [
      walls.map(({ mesh }) => mesh),
      count,
    ] as const);
    const triangles = walls.reduce((sum, { mesh }) => sum + mesh.indices.length / 3, 0);
    const note = `${triangles} triangles, medians of ${count} frames each`;
    const median = (values: number[]) => share(values, 0.5);
    return [
      {
        what: 'heat map, one frame',
        value: median(times.heat),
        unit: 'ms',
        against: { what: 'bare scene, lit', value: median(times.lit) },
        note,
      },
      {
        what: 'heat map, one frame',
        value: median(times.heat),
        unit: 'ms',
        against: { what: 'bare scene, one colour, no light', value: median(times.unlit) },
        note,
      },
    ];
  } finally {
    await browser.close();
  }
}
