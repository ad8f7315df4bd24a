import { expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { surveyRecordPdf, verdictWords } from '../../../../src/output';
import { fullPlan, jobWith, plausibleAlcove } from '../../../simulate';
import { readPdf, testFonts } from './readPdf';

it('holds every reading, what is assumed, and every verdict with its reasons, limits and source', async () => {
  const readings = fullPlan(plausibleAlcove(3)).filter(({ kind }) => kind !== 'straightedge');
  const job = jobWith(readings, { display: 'mm', tolerances: { set: 'finished', own: { plumb: 2 } } });
  const result = solve(job);
  const pages = await readPdf(await surveyRecordPdf(job, result, await testFonts()));
  const text = pages.map((page) => page.text.replace(/\s+/g, ' ')).join(' ');
  for (const { id } of result.adjustment.readings) expect(text).toContain(id);
  for (const what of result.adjustment.assumed) expect(text).toContain(what);
  const squeezed = text.replace(/\s/g, '');
  for (const place of [...Object.values(result.walls), ...Object.values(result.corners), result.rim]) {
    for (const words of place.verdict.because) expect(squeezed).toContain(words.replace(/\s/g, ''));
  }
  expect(text).toContain(`Rim: ${verdictWords[result.rim.verdict.verdict].toLowerCase()}`);
  expect(text).toContain('DIN 18202, table 2');
  expect(text).toContain('plumb 2 mm/m');
  expect(text).toContain('JCGM 106:2012');
});

it('comes on pages also where templates are printed off a roll', async () => {
  const job = jobWith(fullPlan(plausibleAlcove(3)), { display: 'mm' });
  const [page] = await readPdf(await surveyRecordPdf(job, solve(job), await testFonts(), { paper: 'roll' }));
  expect([page!.width, page!.height]).toEqual([expect.closeTo(210, 1), expect.closeTo(297, 1)]);
});
