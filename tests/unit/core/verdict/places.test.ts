import { describe, expect, it } from 'vitest';
import type { RimReport } from '../../../../src/core/diagnose';
import { cornerVerdict } from '../../../../src/core/verdict/corner';
import { rimVerdict } from '../../../../src/core/verdict/rim';
import { jobWith } from '../../../simulate';
import { assuming, sure } from './judging';

const job = jobWith([], { display: 'mm', tolerances: { own: { square: 5, level: 4 } } });
const degrees = (offset: number, depth: number) => 90 + (Math.atan(offset / depth) * 180) / Math.PI;

describe('a corner', () => {
  const corner = (offsets: number[], doubts = sure, sd = 0) =>
    cornerVerdict(
      job,
      doubts,
      'left',
      { angle: offsets.map((offset, i) => ({ height: 500 * (i - 1), value: degrees(offset, 800), sd })) },
      800,
    );

  it('fits up to its limit over the depth of the side wall', () => {
    expect(corner([3.999, -3.999, 0]).verdict).toBe('fits');
    expect(corner([0, 0, 0]).because).toEqual(['Square within its limit at every height.']);
  });

  it('is told at its worst height beyond that', () => {
    expect(corner([0, 5, -6]).because).toEqual([
      'Closes by 6.0 mm ±0.0 mm over 800.0 mm, 500.0 mm above the level line (limit 4.0 mm): bevel the side panel’s back edge and check trim and shelves against it.',
    ]);
    expect(corner([0, 5, 0]).because[0]).toMatch(/^Opens by 5\.0 mm .* at the level line/);
    expect(corner([0, 5, 0]).verdict).toBe('scribe');
  });

  it('carries the ± of its angle', () => {
    // 0.1° over 800 mm is 1.396 mm, at 95 % 2.74 mm
    expect(corner([0, 2, 0], sure, 0.1).because[0]).toMatch(/2\.0 mm ±2\.8 mm .*too close to tell/);
  });

  it('is told where it surely is beyond, before a height at which more cannot be told', () => {
    const angle = [
      { height: 0, value: degrees(6, 800), sd: 0.02 },
      { height: 900, value: degrees(7, 800), sd: 1 },
    ];
    const { because } = cornerVerdict(job, sure, 'left', { angle }, 800);
    expect(because).toEqual([expect.stringMatching(/^Opens by 6\.0 mm .* at the level line .*bevel/)]);
  });

  it('is held while nothing measures it', () => {
    expect(corner([0], assuming('left.square')).verdict).toBe('hold');
    expect(corner([0], assuming('right.square')).verdict).toBe('fits');
  });
});

describe('the rim', () => {
  const rim = (along: number, across: number, doubts = sure, sd = 0) =>
    rimVerdict(job, doubts, {
      x: [-750, 750],
      z: [0, 750],
      outOfLevel: { along, alongSd: sd, across, acrossSd: sd },
    } as unknown as RimReport);

  it('fits up to its limit both ways', () => {
    expect(rim(4, -4).verdict).toBe('fits');
    expect(rim(0, 0).because).toEqual(['Level within its limit both ways.']);
  });

  it('has the panels’ bottom edges scribed to it beyond that', () => {
    expect(rim(-5, 0)).toMatchObject({
      verdict: 'scribe',
      because: ['The left end is higher by 7.5 mm ±0.0 mm (limit 6.0 mm): scribe the back panel’s bottom edge.'],
    });
    expect(rim(0, 5).because[0]).toMatch(/^The front is higher by 3\.8 mm .*side panels’ bottom edges\.$/);
  });

  it('is set right first where water would run to the room', () => {
    expect(rim(0, -4.01)).toMatchObject({ verdict: 'prepare' });
    expect(rim(0, -5).because[0]).toMatch(/water runs to the room/);
  });

  it('says so where its ± is too wide, and what is not measured', () => {
    expect(rim(3, 0, sure, 1).because[0]).toMatch(/too close to tell/);
    expect(rim(0, 0, assuming('rim.levelAcross'))).toMatchObject({ verdict: 'hold' });
  });
});
