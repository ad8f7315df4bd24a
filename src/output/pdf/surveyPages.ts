import type { Job, Result } from '../../core';
import { lengthsOf } from '../drawing';
import { scanAssumedWords, scanSurfaceLines, scanSurfaceNames } from '../words';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';
import { misfitWords, readingWords, valueWords } from './readingWords';

const flags = { 're-measure': 'RE-MEASURE', unchecked: 'nothing checks it', off: 'off, not used' };

/** Every reading with its misfit and what checks it; returns the first page. */
export function surveyPages(pack: Pack, job: Job, { adjustment }: Result): Leaf {
  const flow = new Flow(
    pack,
    'Survey record',
    'Control lines: a level line and a plumb line on the back wall. Heights are told from the level line, distances on the back wall from the plumb line, on the side walls out from the back wall.',
  );
  const first = flow.leaf;
  flow.table(
    [
      { title: 'Reading', bold: true },
      { title: 'What and where' },
      { title: 'As read', align: 'end' },
      { title: 'Misfit', align: 'end' },
      { title: 'w', align: 'end' },
      { title: 'Checked', align: 'end' },
      { title: '' },
    ],
    adjustment.readings.map((row) => {
      const { what, where, note } = readingWords(row.id, job);
      return [
        row.id,
        `${what}: ${where}${note ? ` – ${note}` : ''}`,
        valueWords(row.kind, row.observed, job),
        row.residual === null ? '–' : misfitWords(row.kind, row.residual),
        row.w === null ? '–' : row.w.toFixed(1),
        row.redundancy === null ? '–' : `${Math.round(100 * row.redundancy)} %`,
        row.flag ? flags[row.flag] : '',
      ];
    }),
    7.5 * POINT,
  );
  flow.paragraph(
    'Misfit: adjusted value less the reading. w: misfit over its own standard deviation; beyond 3.29 the reading should be taken again. Checked: share of an error in this reading that the other readings would show.',
    { size: 8 * POINT },
  );
  scans(flow, job, adjustment.scans);
  return first;
}

/** What each scan in use showed of each surface, and how far off it is. */
function scans(flow: Flow, job: Job, found: Result['adjustment']['scans']): void {
  const { fine, plusMinus } = lengthsOf(job);
  const lengths = { fine: (mm: number) => fine(mm).text, plusMinus: (sd: number) => plusMinus(sd).text };
  for (const { id, surfaces } of found) {
    const { source, points } = job.scans.find((scan) => scan.id === id) ?? {};
    flow.heading(
      `Scan ${[source, points && `${points.toLocaleString('en')} points`].filter(Boolean).join(', ') || id}`,
    );
    flow.table(
      [{ title: 'Surface', bold: true }, { title: 'What the scan showed' }, { title: 'Assumed, not measured' }],
      surfaces.map((surface) => [
        scanSurfaceNames[surface.surface],
        scanSurfaceLines(surface, lengths)
          .map(({ name, words }) => `${name}: ${words}`)
          .join('. '),
        scanAssumedWords(surface) || '–',
      ]),
      7.5 * POINT,
    );
  }
}
