import type { EdgeDrawing, HoleDrawing, PanelDrawing } from './drawing';
import { around } from './rectangle';
import { type Shape, type Words, words } from './shape';
import { shapeBounds } from './shapeBounds';
import type { MeasureText } from './textWidth';

export interface InsideOptions {
  /** font size in mm; smaller, but not below `smallest`, where an edge's name would be longer than its place */
  largest: number;
  smallest: number;
  /** stroke at a mark, mm, that the names keep clear of */
  tick: number;
  measure: MeasureText;
}

/** Names of the edges and of the control lines, inside the outline. */
export function insideLabels(drawing: PanelDrawing, { largest, smallest, tick, measure }: InsideOptions): Shape[] {
  const size = Math.max(Math.min(smallest, largest), fittingSize(drawing, largest, measure));
  return [
    ...controlLineNames(drawing, size),
    ...drawing.edges.flatMap((edge) =>
      edgeName(edge, drawing, { size, smallest, measure, clear: 0.7 * tick + 0.6 * size }),
    ),
  ];
}

function controlLineNames({ levelLine, plumbDatum, outline }: PanelDrawing, size: number): Shape[] {
  const [levelLeft] = levelLine.line;
  const [, datumTop] = plumbDatum.line;
  const { left, right } = around(outline);
  const beside = datumTop[0] < (left + right) / 2 ? 1.1 : -0.4;
  return [
    words(levelLine.label, [levelLeft[0] + 4 * size, levelLeft[1] + 0.4 * size], size),
    words(plumbDatum.label, [datumTop[0] + beside * size, datumTop[1] - 4 * size], size, { angle: 90, anchor: 'end' }),
  ];
}

function fittingSize(drawing: PanelDrawing, largest: number, measure: MeasureText): number {
  const ratios = drawing.edges.map((edge) => {
    const [first, last] = [edge.path[0], edge.path.at(-1)];
    if (!first || !last) return 1;
    const [, length] = longerStretch(edge, drawing);
    return length / (measure(edgeWords(edge), largest, false) + 6 * largest);
  });
  return largest * Math.min(1, ...ratios);
}

const edgeWords = ({ title, methodWords }: EdgeDrawing): string => `${title.toUpperCase()}: ${methodWords}`;

/** Below 1 a name is tried smaller, above 1 farther from its edge, best first. */
const STEPS = [1, 0.8, 0.65, 1.5, 2.2, 3];
/** Shares of the free stretch where an edge's name is tried, best first. */
const SHARES = [0.5, 0.25, 0.75, 0, 1];

interface NameSetting {
  size: number;
  smallest: number;
  /** distance from the edge, mm */
  clear: number;
  measure: MeasureText;
}

function edgeName(edge: EdgeDrawing, drawing: PanelDrawing, { size, smallest, clear, measure }: NameSetting): Shape[] {
  const { path, place } = edge;
  if (path.length === 0) return [];
  const [middleAt, length] = longerStretch(edge, drawing);
  const upright = place === 'left' || place === 'right';
  const ends = path.map((point) => point[upright ? 0 : 1]);
  const text = edgeWords(edge);
  const names = STEPS.flatMap((step) => {
    const own = Math.max(Math.min(smallest, size), Math.min(1, step) * size);
    const away = Math.max(1, step) * clear;
    const off = place === 'left' || place === 'bottom' ? Math.max(...ends) + away : Math.min(...ends) - away;
    const baseline = { left: off + 0.8 * own, right: off, bottom: off, top: off - 0.8 * own }[place];
    return SHARES.map((share) => {
      const along = middleAt + (share - 0.5) * Math.max(0, length - measure(text, own, false) - 2 * own);
      return words(text, upright ? [baseline, along] : [along, baseline], own, {
        anchor: 'middle',
        angle: upright ? 90 : 0,
      });
    });
  });
  return [names.find((name) => !drawing.holes.some((hole) => overHole(name, hole, measure))) ?? names[0]!];
}

function overHole(name: Words, { centre: [x, y], diameter: { mm } }: HoleDrawing, measure: MeasureText): boolean {
  const box = shapeBounds([name], measure);
  const reach = mm / 2 + 0.5 * name.size;
  return x + reach > box.left && x - reach < box.right && y + reach > box.bottom && y - reach < box.top;
}

/** Middle and length of the longer part of an edge between its ends and the control line that crosses it. */
function longerStretch({ path, place }: EdgeDrawing, { levelLine, plumbDatum }: PanelDrawing): [number, number] {
  const axis = place === 'left' || place === 'right' ? 1 : 0;
  const [low, high] = [path[0]![axis], path.at(-1)![axis]];
  const cut = axis === 1 ? levelLine.line[0][1] : plumbDatum.line[0][0];
  if (cut <= low || cut >= high) return [(low + high) / 2, high - low];
  return cut - low > high - cut ? [(low + cut) / 2, cut - low] : [(cut + high) / 2, high - cut];
}
