import type { Job, Result } from '../../core';
import { panelTitle } from '../drawing';
import { bedFigure, bedSteps } from '../figure';
import { bedLines, bedText } from '../words';
import { setFigure } from './drawFigure';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

const WALLS = ['back', 'left', 'right'] as const;

/** How each sheet sits on its wall: bed map, what is known of it with ±, and the list of shims; returns the page. */
export function bedPages(pack: Pack, job: Job, result: Result): Leaf {
  const { fine, plusMinus, across, up } = bedText(job);
  const steps = bedSteps(job, result);
  const flow = new Flow(
    pack,
    'How the sheets sit',
    `Bed between wall and sheet, seen facing each wall: from white at ${fine(steps[0]!)} to darkest over ${fine(steps.at(-1)!)}, a gray for each ${fine(steps[1]! - steps[0]!)}. Numbers: shims.`,
  );
  const first = flow.leaf;
  setFigure(flow, (size) => bedFigure(job, result, size), 105, 8 * POINT);
  for (const name of WALLS) {
    flow.heading(panelTitle(name, job));
    for (const { label, words } of bedLines(name, result.bedding[name], job)) flow.paragraph(`${label}: ${words}.`);
  }
  const rows = WALLS.flatMap((name) =>
    result.bedding[name].shims.list.map(({ u, v, thickness, sd }, k) => [
      panelTitle(name, job),
      String(k + 1),
      across(name, u),
      up(v),
      fine(thickness),
      plusMinus(sd),
    ]),
  );
  if (rows.length > 0) {
    flow.heading('Shims');
    flow.table(
      [
        { title: 'Panel', bold: true },
        { title: 'No.', align: 'end' },
        { title: 'From the plumb line or the back wall', align: 'end' },
        { title: 'From the level line', align: 'end' },
        { title: 'Thickness', align: 'end' },
        { title: '±', align: 'end' },
      ],
      rows,
    );
  }
  flow.paragraph(
    'Fix shims to the wall with the adhesive, of a stuff that water does not harm, and lay a straightedge over them before the panel goes on: the survey’s ± is theirs too.',
  );
  flow.paragraph(
    'Stiffness, strain limit and reach are as stated in the job, common practice, no source: the makers’ sheets of panel and adhesive go first.',
    { size: 8 * POINT },
  );
  return first;
}
