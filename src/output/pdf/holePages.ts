import type { Job } from '../../core';
import type { PanelDrawing } from '../drawing';
import { holeFigure } from '../figure';
import { holeCaution } from './cautions';
import { setFigure } from './drawFigure';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Every hole measured from rim, back and edges, panel by panel; null where there is none. */
export function holePages(pack: Pack, job: Job, drawings: PanelDrawing[]): Leaf | null {
  const holed = drawings.filter(({ holes }) => holes.length > 0);
  if (holed.length === 0) return null;
  const flow = new Flow(
    pack,
    'Hole map',
    `Centres and sizes, from finished rim and back as the job gives them, and straight to the cut edges. ${holed[0]!.statement}.`,
  );
  const first = flow.leaf;
  for (const drawing of holed) {
    flow.heading(drawing.title);
    setFigure(flow, (size) => holeFigure(drawing, job, size, pack.measure), holed.length > 1 ? 78 : 130, 8 * POINT);
    flow.table(
      [
        { title: 'Hole', bold: true },
        { title: 'Size', bold: true },
        { title: 'From rim, ±', align: 'end' },
        { title: 'From back, ±', align: 'end' },
        { title: 'To nearest edge', align: 'end' },
      ],
      drawing.holes.map((hole) => [
        hole.name,
        `Ø ${hole.diameter.text}`,
        `${hole.aboveRimWords} ${hole.plusMinus.up.text}`.trim(),
        `${hole.fromWords} ${hole.plusMinus.across.text}`.trim(),
        hole.edgeDistance.text,
      ]),
      8 * POINT,
    );
  }
  flow.paragraph(
    'Hold the panel dry against pipes and boxes before drilling: what comes out of the wall goes before the paper.',
  );
  flow.paragraph(holeCaution, { mark: '!', indent: 4, size: 8 * POINT });
  return first;
}
