import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { condenseScan, parseJob, parseJobText, segmentScan, solve } from '../../../src/core';
import { extentOf, guessUnit, guessUp, readScan, toCloud } from '../../../src/scan';
import { markErrors } from '../../simulate';
import { demoScanJob, demoScanPly, scannedAlcove } from '../../simulate/demoScan';
import { scenes } from '../../simulate/scenes';

const folder = new URL('../../../scenes/', import.meta.url);

it('come from their script, all of them', () => {
  expect(
    readdirSync(folder)
      .filter((file) => file.endsWith('.json'))
      .sort(),
  ).toEqual(scenes.map(({ file }) => file).sort());
});

describe('the demo scan', () => {
  const scan = readFileSync(new URL('scans/tub-alcove.ply', folder));
  const job = JSON.parse(readFileSync(new URL('scans/tub-alcove.json', folder), 'utf8'));

  it('and its job are what the script writes, and small', () => {
    expect(scan.equals(demoScanPly())).toBe(true);
    expect(job).toEqual(JSON.parse(JSON.stringify(demoScanJob())));
    expect(scan.length).toBeLessThan(300_000);
  });

  it('is read, sorted and taken in, and gives a wavy wall that a few readings alone do not', async () => {
    const read = await readScan(new File([scan], 'tub-alcove.ply'));
    if (!read.ok) throw new Error(read.message);
    const extent = extentOf(read.scan.positions);
    const cloud = toCloud(read.scan, guessUnit(read.scan, extent), guessUp(read.scan, extent));
    const found = segmentScan(cloud, { levelAboveFloor: job.levelAboveFloor, rimAboveFloor: job.rim.apronHeight });
    if ('reason' in found) throw new Error(found.reason);
    const cells = condenseScan(cloud, found.labels, found.frame)!;
    const parsed = parseJob({ ...job, scans: [{ id: 'scan1', kind: 'scan', ...cells }] });
    if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
    const { adjustment, panels } = solve(parsed.job);
    expect(adjustment.suspect).toBeNull();
    expect(adjustment.scale).toBe(1);
    expect(adjustment.uneven).toContain('right');
    for (const { panel, edge, along, error, sd } of markErrors(scannedAlcove, parsed.job, panels)) {
      if (panel === 'back') expect(Math.abs(error), `${edge} ${along}`).toBeLessThanOrEqual(3 * sd + 1e-9);
    }
  });
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
    for (const { error, sd } of markErrors(alcove, parsed.job, result.panels)) {
      expect(Math.abs(error)).toBeLessThanOrEqual(3 * sd + 1e-9);
    }
  });
});
