import { type Job, type PanelName, type Result, Z_95 } from '../../core';
import { lengthsOf, type PanelDrawing, panelTitle } from '../drawing';
import { alcoveFigure } from '../figure';
import { placesInTheWay } from '../words';
import { setFigure } from './drawFigure';
import { Flow } from './flow';
import type { Leaf, Pack } from './pack';
import { POINT } from './paper';

/** A page's entry on the cover, filled in once the page exists. */
export interface Contents {
  enter: (title: string, leaf: Leaf) => void;
}

/** Height of the picture, mm, and where problems take some of the page. */
const PICTURE = 112;
const SMALL_PICTURE = 78;

/** Cover: what is wrong, the alcove, its panels, what is in the pack. */
export function coverPages(pack: Pack, job: Job, result: Result, drawings: PanelDrawing[], entries: number): Contents {
  const flow = new Flow(
    pack,
    job.name || 'Untitled job',
    'Job pack: survey record, cut cards, materials, order of work and full-size templates',
  );
  const first = beforePanels(result);
  problems(flow, result, job, first);
  const clear = result.problems.length + first.length === 0;
  setFigure(flow, () => alcoveFigure(job, result), clear ? PICTURE : SMALL_PICTURE, 0);
  panelTable(flow, result, job, drawings);
  return contentsList(flow, pack, entries);
}

/** What must be settled before a sheet is cut, or the plain word that there is nothing. */
function problems(flow: Flow, { problems: found }: Result, job: Job, first: string[]): void {
  const { coarse } = lengthsOf(job);
  if (found.length === 0) {
    if (first.length > 0) flow.framed('The sheets cover the alcove, but before panels are cut or set', first);
    else flow.paragraph('Nothing found that keeps this job from being built as it stands.', { bold: true });
    return;
  }
  flow.framed(
    found.length === 1 ? 'One problem to solve before cutting' : `${found.length} problems to solve before cutting`,
    found
      .map(
        ({ where, what, howMuch }) =>
          `${placeOfProblem(where, job)}: ${what}${howMuch === null ? '' : ` (${coarse(howMuch).text})`}`,
      )
      .concat(first),
  );
}

/** Readings that disagree, and places that are not ready; why is told with the walls. */
function beforePanels(result: Result): string[] {
  const { length } = result.adjustment.suspects;
  return [
    ...(length === 1 ? ['One reading looks misread: take it again.'] : []),
    ...(length > 1 ? [`${length} readings look misread: take them again.`] : []),
    ...placesInTheWay(result).map((words) => `${words}; why, see the next page.`),
  ];
}

/** `panels.left.holes.valve` as `Left side panel, hole valve`. */
function placeOfProblem(where: string, job: Job): string {
  const [, panel, rest = ''] = /^panels\.(back|left|right)(?:\.(.*))?$/s.exec(where) ?? [];
  if (!panel) return where;
  const title = panelTitle(panel as PanelName, job);
  return rest ? `${title}, ${rest.replace(/^(hole|edge)s\./, '$1 ')}` : title;
}

function panelTable(flow: Flow, { panels }: Result, job: Job, drawings: PanelDrawing[]): void {
  const { fine, plusMinus } = lengthsOf(job);
  flow.heading('Panels');
  flow.table(
    [
      { title: 'Panel', bold: true },
      { title: 'Overall size' },
      { title: 'Sheet' },
      { title: 'Edges to cut' },
      { title: 'Widest ±', align: 'end' },
      { title: 'Bed up to', align: 'end' },
    ],
    drawings.map((drawing) => {
      const panel = panels[drawing.name];
      const cuts = drawing.edges
        .filter(({ method }) => method !== 'factory')
        .map(({ title, methodWords }) => `${title.toLowerCase().replace(' edge', '')}: ${methodWords.split(':')[0]}`);
      return [
        drawing.title,
        drawing.sizeWords.replace(' overall', ''),
        drawing.sheetWords,
        cuts.join(', ') || 'none',
        plusMinus(panel.worst95 / Z_95).text,
        fine(panel.bedMax).text,
      ];
    }),
  );
}

function contentsList(flow: Flow, pack: Pack, entries: number): Contents {
  const size = 9 * POINT;
  const step = 1.4 * size;
  flow.heading('In this pack');
  flow.paragraph(
    'A sheet can be marked from its cut card alone. Print the full-size pages where a cut is to be traced.',
  );
  const rows = Math.ceil(entries / 2);
  flow.ensure(rows * step + 2);
  const {
    leaf: { pen, content },
    y,
  } = flow;
  flow.y -= rows * step + 1;
  const column = (content.right - content.left - 8) / 2;
  let entered = 0;
  return {
    enter: (title, leaf) => {
      const x = content.left + (entered < rows ? 0 : column + 8);
      const line = y - ((entered % rows) + 0.9) * step;
      pen.text(title, [x, line], { size });
      pen.text(`${leaf.number}`, [x + column, line], { size, align: 'end' });
      const from = x + pack.measure(title, size, false) + 1.5;
      pen.line([from, line + 0.2], [x + column - 6, line + 0.2], { width: 0.15, gray: 0.5, dash: [0.3, 1] });
      entered += 1;
    },
  };
}
