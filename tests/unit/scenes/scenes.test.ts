import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { parseJobText, solve } from '../../../src/core';
import { trueEdge } from '../../simulate';
import { scenes } from '../../simulate/scenes';

const folder = new URL('../../../scenes/', import.meta.url);

it('come from their script, all of them', () => {
  expect(
    readdirSync(folder)
      .filter((file) => file.endsWith('.json'))
      .sort(),
  ).toEqual(scenes.map(({ file }) => file).sort());
});

describe.each(scenes)('$file', ({ file, alcove, job }) => {
  const text = readFileSync(new URL(file, folder), 'utf8');
  const parsed = parseJobText(text);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const result = solve(parsed.job);

  it('is what the script writes', () => {
    expect(JSON.parse(text)).toEqual(JSON.parse(JSON.stringify(job)));
  });

  it('can be built, with nothing assumed and nothing suspect', () => {
    expect(result.problems).toEqual([]);
    expect(result.adjustment.assumed).toEqual([]);
    expect(result.adjustment.suspect).toBeNull();
    expect(result.panels.right.holes.length + result.panels.left.holes.length).toBeGreaterThan(2);
  });

  it('has its marks within three standard deviations of the alcove that it was measured in', () => {
    for (const panel of ['back', 'left', 'right'] as const) {
      for (const [edge, { marks }] of Object.entries(result.panels[panel].edges)) {
        for (const { u, v, sd } of marks) {
          const [along, at] = edge === 'bottom' || edge === 'top' ? [u, v] : [v, u];
          const misfit = Math.abs(at - trueEdge(alcove, parsed.job, panel, edge as 'left', along));
          expect(misfit).toBeLessThanOrEqual(3 * sd + 1e-9);
        }
      }
    }
  });
});
