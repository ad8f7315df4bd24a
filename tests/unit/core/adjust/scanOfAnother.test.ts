import { describe, expect, it } from 'vitest';
import { condenseScan, segmentScan, solve } from '../../../../src/core';
import { extentOf, guessUnit, guessUp, toCloud } from '../../../../src/scan';
import { scannedPly } from '../../../browser/scannedFile';
import { jobs } from '../../../fuzz/samples';
import { fileOf, scanIn } from '../../scan/scanFile';

/** Readings and cells disagree, so that standard deviations are scaled up and the cells' rows are made anew. */
describe('a scan of another alcove than the one that was read', () => {
  it('gives a result, whatever the readings', async () => {
    const scan = await scanIn(fileOf('bath.ply', new Uint8Array(scannedPly())));
    const extent = extentOf(scan.positions);
    const cloud = toCloud(scan, guessUnit(scan, extent), guessUp(scan, extent));
    for (const job of jobs) {
      const { levelAboveFloor, rim } = job;
      const found = segmentScan(cloud, { levelAboveFloor, rimAboveFloor: rim.apronHeight });
      if ('reason' in found) throw new Error(found.reason);
      const cells = condenseScan(cloud, found.labels, found.frame)!;
      const scans = [{ id: 's1', kind: 'scan' as const, scaleSd: 2, tiltSd: 5, biasSd: 0.5, ...cells }];
      const { adjustment } = solve({ ...job, scans });
      expect(adjustment.scans).toHaveLength(1);
      expect(adjustment.readings.length).toBeGreaterThan(0);
    }
  });
});
