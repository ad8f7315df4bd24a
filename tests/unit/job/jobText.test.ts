import { expect, it } from 'vitest';
import { parseJobText } from '../../../src/core';
import { blankJob, demos, firstDemo, jobFileName, jobText } from '../../../src/job';
import { testJob } from './testJob';

it('writes a job that reads back the same', () => {
  for (const job of [testJob(), blankJob(), ...demos.map((demo) => demo.job)]) {
    expect(parseJobText(jobText(job))).toEqual({ ok: true, job });
  }
});

it.each([
  ['Vexleigh 12: upstairs bath', 'vexleigh-12-upstairs-bath.json'],
  ['  ', 'job.json'],
  ['Café №5/6', 'cafe-no5-6.json'],
  ['Béton ciré', 'beton-cire.json'],
])('makes a file name of "%s"', (name, file) => expect(jobFileName({ name })).toBe(file));

it('brings at least three demo jobs and opens on one of them', () => {
  expect(demos.length).toBeGreaterThanOrEqual(3);
  expect(demos.map((demo) => demo.job)).toContain(firstDemo);
});
