import { readFileSync } from 'node:fs';
import { chromium } from '@playwright/test';
import { parseJobText, solve } from '../../src/core';
import { drawnHeat } from '../../src/scene/heat/drawn-heat';
import { browserLaunch } from '../browser/browser';
import { bundled } from '../browser/bundle';
import { MOST_SCRIPT } from '../browser/scriptOnOpening';
import type { BenchOptions, Row } from './bench';
import { firstFrameTimes } from './draw/firstFrame';
import type { DrawTimes } from './draw/stage';
import { share } from './time';

export const name = 'draw';
export const about =
  'In a real browser, 1024 × 768, drawn in software, in turns: one frame of the heat map’s walls against a bare three.js scene of the same triangles; the finished alcove from opening the page to its first frame against a bare three.js page.';

const ROUNDS = 60;
/** Pages opened for one round of frames. */
const OPENED = 1 / 6;

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
    const pages = Math.max(1, Math.round(count * OPENED));
    const first = await firstFrameTimes(browser, pages);
    const bare = { what: 'bare three.js page, first frame', value: median(first.bare) };
    const opened = `medians of ${pages} pages opened, nothing fetched before`;
    return [
      {
        what: 'heat map, one frame, against a lit scene',
        value: median(times.heat),
        unit: 'ms',
        against: { what: 'bare scene, lit', value: median(times.lit) },
        asked: { of: 'ratio', atMost: 1.3 },
        note,
      },
      {
        what: 'heat map, one frame, against a scene without light',
        value: median(times.heat),
        unit: 'ms',
        against: { what: 'bare scene, one colour, no light', value: median(times.unlit) },
        note,
      },
      { what: 'finished alcove, plain picture', value: median(first.picture), unit: 'ms', against: bare, note: opened },
      {
        what: 'finished alcove, first frame in 3D',
        value: median(first.alcove),
        unit: 'ms',
        against: bare,
        note: opened,
      },
      {
        what: 'script that opening fetches, gzipped',
        value: first.scriptBytes,
        unit: 'bytes',
        asked: { atMost: MOST_SCRIPT },
      },
    ];
  } finally {
    await browser.close();
  }
}
