import { expect, it } from 'vitest';
import { solve } from '../../../../src/core';
import { scanSurfaceNames, surveyRecordPdf, verdictWords } from '../../../../src/output';
import { exactValue, fullPlan, jobWith, plausibleAlcove } from '../../../simulate';
import { cellScan } from '../../../simulate/scanner';
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

it('tells what a scan showed of each surface, how far off it is and what of it is assumed', async () => {
  const alcove = plausibleAlcove(3);
  const tape = { id: 'drop', kind: 'tape-to-rim', wall: 'back', at: 0 } as const;
  const scan = { ...cellScan(alcove, { sd: 0.3 }), source: 'bath.ply', points: 250_000 };
  const job = jobWith([{ ...tape, value: exactValue(alcove, tape) }], { display: 'mm', scans: [scan] });
  const result = solve(job);
  const pages = await readPdf(await surveyRecordPdf(job, result, await testFonts()));
  const text = pages
    .map((page) => page.text)
    .join('')
    .replace(/\s/g, '');
  expect(text).toContain('Scanbath.ply,250,000points');
  const { surfaces } = result.adjustment.scans[0]!;
  expect(surfaces.length).toBeGreaterThanOrEqual(4);
  for (const { surface, cells } of surfaces) {
    expect(text).toContain(scanSurfaceNames[surface].replace(/\s/g, ''));
    expect(text).toContain(`${cells.toLocaleString('en')}${surface.startsWith('front') ? 'heights' : 'cells'}`);
  }
});
