import { type Job, parseJob } from '../../../src/core';

/** A small job with one reading of each shape that the store has to deal with. */
export function testJob(): Job {
  const parsed = parseJob({
    format: 'nookwright-job',
    version: 1,
    name: 'Test alcove',
    readings: [
      { id: 'r1', kind: 'tape-to-corner', side: 'left', height: 700, value: 752.5 },
      { id: 'r2', kind: 'tape-to-corner', side: 'right', height: 700, value: 760 },
      {
        id: 'r3',
        kind: 'plumb',
        wall: 'left',
        at: 300,
        gaps: [
          { height: -600, value: 40 },
          { height: 0, value: 42 },
          { height: 900, value: 47 },
        ],
      },
    ],
    fixtures: [{ id: 'f1', kind: 'valve', wall: 'right', aboveRim: 330, fromBack: 381, hole: 95 }],
    sheets: {
      back: { width: 1575, height: 2440 },
      left: { width: 815, height: 2440 },
      right: { width: 815, height: 2440 },
    },
  });
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  return parsed.job;
}
