import { type Job, parseJob } from '../core';

/**
 * A job with no reading, its sheets as stiff as stated and cut as they sit, the rest at its default; 62 × 96 in and 32
 * × 96 in.
 */
export function blankJob(): Job {
  const parsed = parseJob({
    format: 'nookwright-job',
    version: 1,
    bedding: { stiffness: 'stated', edges: 'seated' },
    readings: [],
    sheets: {
      back: { width: 1574.8, height: 2438.4 },
      left: { width: 812.8, height: 2438.4 },
      right: { width: 812.8, height: 2438.4 },
    },
  });
  if (!parsed.ok) throw new Error(`the blank job is not valid: ${parsed.faults[0]?.message}`);
  return parsed.job;
}
