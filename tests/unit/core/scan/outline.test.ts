import { expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import type { Reading } from '../../../../src/core/job-file';
import { condenseScan, segmentScan } from '../../../../src/core/scan';
import { exactValue, jobWith, markErrors, plausibleAlcove, type Unread } from '../../../simulate';
import { emptyScene, NO_ERRORS, scanOf, usualStations } from '../../../simulate/scanner';

it('points to outlines: panels end where the alcove truly does, as near as they say', () => {
  const alcove = plausibleAlcove(8);
  const { cloud } = scanOf(emptyScene(alcove), {
    points: 120_000,
    seed: 8,
    errors: { ...NO_ERRORS, noise: 2 },
    stations: usualStations(),
    yaw: 2,
    shift: [400, -300, 900],
  });
  const outcome = segmentScan(cloud, { upKnown: true });
  if ('reason' in outcome) throw new Error(outcome.reason);
  const cells = condenseScan(cloud, outcome.labels, outcome.frame)!;
  const read = (reading: Unread): Reading => ({ ...reading, value: exactValue(alcove, reading), sd: 0.3 }) as Reading;
  const job = jobWith(
    [
      read({ id: 'left', kind: 'tape-to-corner', side: 'left', height: 0 }),
      read({ id: 'right', kind: 'tape-to-corner', side: 'right', height: 0 }),
      read({ id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 }),
    ],
    { scans: [{ id: 'scan', kind: 'scan', scaleSd: 2, tiltSd: 0.1, biasSd: 0.3, ...cells }] },
  );
  const { panels } = solve(job);
  const off = markErrors(alcove, job, panels)
    .filter(({ edge }) => edge !== 'top')
    .map(({ error, sd }) => ({ error: Math.abs(error), stated: 1.96 * sd }));
  expect(off.length).toBeGreaterThan(20);
  expect(Math.max(...off.map(({ error }) => error))).toBeLessThan(1);
  expect(off.filter(({ error, stated }) => error <= stated).length / off.length).toBeGreaterThan(0.95);
  expect(Math.max(...off.map(({ stated }) => stated))).toBeLessThan(2);
});
