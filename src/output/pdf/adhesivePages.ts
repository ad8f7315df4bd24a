import { formatLength, type Job, type Result } from '../../core';
import { lengthsOf, panelTitle } from '../drawing';
import { adhesiveFigure } from '../figure';
import { setFigure } from './drawFigure';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Where adhesive and strips go behind each panel, and how much; returns the page. */
export function adhesivePages(pack: Pack, job: Job, result: Result): Leaf {
  const { layout, spacing, edgeClear, pressedWidth } = job.supplies.adhesive;
  const { strips } = job.supplies;
  const text = (mm: number): string => formatLength(mm, { unit: job.display });
  const { fine } = lengthsOf(job);
  const flow = new Flow(
    pack,
    'Adhesive layout',
    `Seen facing each wall. ${layout === 'dots' ? 'Dots' : 'Upright beads'} about ${text(spacing)} apart, ${text(edgeClear)} clear of edges and holes, pressed to ${text(pressedWidth)} across; double-faced strips (dashed) about every ${text(strips.spacing)}.`,
  );
  const first = flow.leaf;
  setFigure(flow, (size) => adhesiveFigure(job, result, size), 130, 8 * POINT);
  flow.table(
    [
      { title: 'Panel', bold: true },
      { title: layout === 'dots' ? 'Dots' : 'Beads', align: 'end' },
      { title: 'Bed there', align: 'end' },
      { title: 'Adhesive, pressed', align: 'end' },
      { title: 'Strips', align: 'end' },
    ],
    (['back', 'left', 'right'] as const).map((name) => {
      const { dots, beads, bed, volume, strips: laid } = result.materials.adhesive[name];
      const length = laid.reduce((sum, [[, from], [, to]]) => sum + to - from, 0);
      return [
        panelTitle(name, job),
        String(dots.length + beads.length),
        bed === null ? '–' : bedWords(fine(bed.min).text, fine(bed.max).text),
        `${Math.ceil(volume / 1000)} mL`,
        `${laid.length}, ${text(length)}`,
      ];
    }),
  );
  flow.paragraph(
    'The bed is thicker where the wall is hollow: there, build the dots up so that they reach the wall. Peel the strips last, set the panel on shims at the rim, press from the middle outwards.',
  );
  flow.paragraph(
    "Common practice, no source: the adhesive's own sheet goes first, for spread, open time and what it sticks to.",
    { size: 8 * POINT },
  );
  return first;
}

const bedWords = (least: string, most: string): string => (least === most ? least : `${least} to ${most}`);
