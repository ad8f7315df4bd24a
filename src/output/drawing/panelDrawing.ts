import type { EdgeName, Job, Panel, Result } from '../../core';
import { adviceWords } from './adviceWords';
import { controlLines } from './controlLines';
import type { EdgeDrawing, PanelDrawing, Strip, View } from './drawing';
import { edgeDrawing } from './edgeDrawing';
import { panelTitle, viewStatement } from './edgeWords';
import { grainOf, kerfWords } from './grain';
import { holeDrawing } from './holeDrawing';
import { lengthsOf } from './lengths';
import { orientation } from './orientation';
import { around, type Rectangle } from './rectangle';
import { stripsAlong } from './strips';

const edgeOrder: EdgeName[] = ['bottom', 'top', 'back', 'left', 'front', 'right'];

/** A wider strip is an offcut rather than a sliver, mm. */
const WIDEST_SLIVER = 150;

/** Draws a panel's template as seen from its face, or mirrored as seen from its back. */
export function panelDrawing(
  panel: Panel,
  job: Job,
  problems: Result['problems'] = [],
  view: View = 'face',
  advice: Result['advice'] = [],
): PanelDrawing {
  const lengths = lengthsOf(job);
  const turn = orientation(panel.name, view);
  const sheet = turn.rectangle(panel.flat.sheet);
  const lines = controlLines(panel, sheet, turn, lengths);
  const edges: EdgeDrawing[] = [];
  let number = 1;
  for (const name of edgeOrder) {
    const edge = panel.edges[name];
    if (!edge) continue;
    edges.push(edgeDrawing(name, edge, number, { panel, view, orientation: turn, lines, lengths }));
    number += edges.at(-1)!.marks.length;
  }
  const outline = panel.flat.outline.map(turn.point);
  const own = around(outline);
  const near = nearBy(sheet, own);
  const strips = edges.flatMap((edge): Strip[] =>
    stripsAlong(edge.name, edge.place, edge.path, sheet, near.corner).map(({ kind, widest, ...strip }) => ({
      ...strip,
      kind: kind === 'sliver' && widest > WIDEST_SLIVER ? 'offcut' : kind,
      widest: lengths.coarse(widest),
    })),
  );
  return {
    name: panel.name,
    view,
    title: panelTitle(panel.name, job),
    statement: viewStatement[view],
    outline,
    sign: turn.sign,
    sheet,
    strips,
    grain: grainOf(job.sheets[panel.name].grain, own),
    kerfWords: kerfWords(job, lengths),
    edges,
    sheetWords: `${lengths.fine(sheet.right - sheet.left).text} × ${lengths.fine(sheet.top - sheet.bottom).text}`,
    sizeWords: `${lengths.fine(own.right - own.left).text} × ${lengths.fine(own.top - own.bottom).text} overall, ${lengths.fine(panel.thickness).text} thick`,
    levelLine: lines.levelLine,
    plumbDatum: lines.plumbDatum,
    holes: panel.holes.map((hole) => {
      const own = advice.filter(({ where }) => where === `panels.${panel.name}.holes.${hole.id}`);
      return holeDrawing(
        hole,
        edges,
        lines,
        lengths,
        turn,
        own.map((each) => adviceWords(each, job)),
      );
    }),
    problems: problems
      .filter(({ where }) => where.split(/[.[]/)[1] === panel.name && where.startsWith('panels'))
      .map(({ what, howMuch }) => (howMuch === null ? what : `${what} (${lengths.coarse(howMuch).text})`)),
    bounds: near.bounds,
  };
}

/**
 * `bounds`: the outline and the sheet as far as it lies near; `corner`: the sheet, drawn in to the outline on the sides
 * where an offcut lies.
 */
function nearBy(sheet: Rectangle, outline: Rectangle): { bounds: Rectangle; corner: Rectangle } {
  const out = { left: -1, right: 1, bottom: -1, top: 1 };
  const bounds = { ...outline };
  const corner = { ...sheet };
  for (const side of ['left', 'right', 'bottom', 'top'] as const) {
    const beyond = (sheet[side] - outline[side]) * out[side];
    if (beyond > WIDEST_SLIVER) {
      bounds[side] = outline[side] + (out[side] * WIDEST_SLIVER) / 3;
      corner[side] = outline[side];
    } else if (beyond > 0) bounds[side] = sheet[side];
  }
  return { bounds, corner };
}
