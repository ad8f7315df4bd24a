import { formatLength, type Job, type Result } from '../../core';
import { jointFigure } from '../figure';
import { cartridgeWords, fillerWords, jointRuns, jointWidthAlong, movementBasis, movementUse } from '../words';
import { setFigure } from './drawFigure';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** Which joint takes what, its width along it, and in which run it is closed; returns the first page. */
export function jointPages(pack: Pack, job: Job, result: Result): Leaf {
  const { materials, sequence } = result;
  const flow = new Flow(
    pack,
    'Joint map',
    'Solid: wet joints, closed with sealant. Dashed: room side, closed with paintable caulk. Numbers as in the list.',
  );
  const first = flow.leaf;
  setFigure(flow, (size) => jointFigure(result, size), 118, 7.5 * POINT);
  for (const paste of ['sealant', 'caulk'] as const) {
    const line = materials.lines.find(({ id }) => id === paste);
    if (line !== undefined) flow.paragraph(cartridgeWords(line));
  }
  flow.paragraph(
    `Widths start at the bottom, or at the back (on the back wall: at the left). A run is what can be gunned and tooled before it skins over in ${job.schedule.skinOver} minutes, at the rate in the job. Volumes hold what is lost in tooling.`,
    { size: 8 * POINT },
  );
  const over = materials.joints.filter(({ moves }) => moves !== null && moves.used > 1);
  flow.paragraph(
    `Movement: with ${movementBasis(job)}, ${
      over.length === 0
        ? 'every wet joint is wide enough.'
        : `these are too narrow: ${over.map(({ label, wants }) => `${label} (wants ${formatLength(wants!, { unit: job.display, denominator: 32 })})`).join(', ')}.`
    } A wider joint or a sealant that moves more takes it up; the sheet's and the sealant's own sheets say how much.`,
    { size: 8 * POINT },
  );
  const runs = jointRuns(sequence);
  flow.table(
    [
      { title: 'No.', align: 'end' },
      { title: 'Joint', bold: true },
      { title: 'Closed with' },
      { title: 'Length', align: 'end' },
      { title: 'Width: start, middle, end', align: 'end' },
      { title: 'Moves: of its class' },
      { title: 'Volume', align: 'end' },
      { title: 'Run', align: 'end' },
    ],
    materials.joints.map((joint, i) => [
      String(i + 1),
      joint.label,
      fillerWords[joint.filler],
      formatLength(joint.length, { unit: job.display }),
      jointWidthAlong(joint, job),
      movementUse(joint, job),
      `${Math.ceil(joint.volume)} mL`,
      runs(joint.id),
    ]),
    7.5 * POINT,
  );
  return first;
}
