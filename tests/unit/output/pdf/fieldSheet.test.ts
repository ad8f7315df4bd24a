import { expect, it } from 'vitest';
import { surveyPlan } from '../../../../src/core';
import { fieldSheetPdf } from '../../../../src/output';
import { jobWith } from '../../../simulate';
import { readPdf, testFonts } from './readPdf';

it('lists every reading of the plan in order, with room to write, and what it leads to', async () => {
  const job = jobWith([]);
  const plan = surveyPlan(job);
  const pages = await readPdf(await fieldSheetPdf(job, await testFonts()));
  const text = pages.map((page) => page.text.replace(/\s+/g, ' ')).join(' ');
  expect(text).toContain('Field sheet');
  const blanks = text.match(/_{10}(?!_)/g)!.length;
  const rows = plan.reduce((sum, { reading }) => sum + (reading.kind === 'plumb' ? reading.gaps.length : 1), 0);
  expect(blanks).toBeGreaterThanOrEqual(2 * rows);
  expect(plan.at(-1)!.after).toBeLessThanOrEqual(25.4 / 32);
  expect(text).toContain('every cut edge is known to ±1/32"');
});
