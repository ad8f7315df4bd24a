import type { EdgeName, Mark, Panel, PanelEdge } from '../../core';
import type { ControlLines } from './controlLines';
import type { EdgeDrawing, MarkDrawing, View } from './drawing';
import { edgePath } from './edgePath';
import { edgeTitle, methodWords, wasteWords } from './edgeWords';
import { leaveExtra } from './leaveExtra';
import { type Lengths, SCRIBE_BEYOND } from './lengths';
import type { Orientation } from './orientation';

interface Setting {
  panel: Panel;
  view: View;
  orientation: Orientation;
  lines: ControlLines;
  lengths: Lengths;
}

/** One edge as drawn; its marks are numbered from `firstNumber`. */
export function edgeDrawing(name: EdgeName, edge: PanelEdge, firstNumber: number, setting: Setting): EdgeDrawing {
  const { panel, view, orientation, lengths } = setting;
  const place = orientation.place(name);
  const upright = place === 'left' || place === 'right';
  const turned = !upright && orientation.sign === -1;
  const first = edge.marks[0];
  const last = edge.marks.at(-1);
  const flat = first && last ? edgePath(panel.flat.outline, name, first.sheet, last.sheet) : [];
  const path = flat.map(orientation.point);
  const inOrder = turned ? [...edge.marks].reverse() : edge.marks;
  const marks =
    edge.method === 'factory' ? [] : inOrder.map((mark, i) => markDrawing(mark, firstNumber + i, upright, setting));
  return {
    name,
    place,
    title: edgeTitle(name, view),
    method: edge.method,
    methodWords: methodWords[edge.method],
    wasteWords: wasteWords(edge.method, place),
    path: turned ? path.reverse() : path,
    marks,
    sliverWords: sliverRange(edge, lengths),
    leave: leaveExtra(marks, lengths),
  };
}

function markDrawing(
  mark: Mark,
  number: number,
  upright: boolean,
  { orientation, lines, lengths }: Setting,
): MarkDrawing {
  const at = orientation.point(mark.sheet);
  const up = lines.up(at);
  const right = lines.across(at);
  const away = (mm: number) => lengths.fine(Math.abs(mm));
  const onLine = (mm: number) => away(mm).text === lengths.fine(0).text;
  const upSide = up < 0 ? 'below' : 'above';
  const rightSide = right < 0 ? 'left' : 'right';
  const upWords = onLine(up) ? 'on level line' : `${away(up).text} ${upSide} level line`;
  const rightWords = onLine(right) ? 'on plumb line' : `${away(right).text} ${rightSide} of plumb line`;
  const plusMinus = lengths.plusMinus(mark.sd);
  return {
    number,
    at,
    across: away(upright ? right : up),
    along: away(upright ? up : right),
    direction: onLine(upright ? right : up) ? '' : upright ? rightSide : upSide,
    acrossWords: upright ? rightWords : upWords,
    alongWords: upright ? upWords : rightWords,
    plusMinus,
    sliver: lengths.coarse(Math.abs(mark.sliver)),
    sliverWords: sliverAt(mark.sliver, lengths),
    scribe: plusMinus.mm > SCRIBE_BEYOND,
  };
}

const LEAST_STRIP = 0.05;

function sliverAt(sliver: number, lengths: Lengths): string {
  if (sliver < -LEAST_STRIP) return `sheet short by ${lengths.coarse(-sliver).text}`;
  if (sliver <= LEAST_STRIP) return 'no cut';
  return `cut off ${lengths.coarse(sliver).text}`;
}

function sliverRange({ sliver: { min, max }, method }: PanelEdge, lengths: Lengths): string {
  if (min < -LEAST_STRIP) return `sheet short by up to ${lengths.coarse(-min).text}`;
  if (method === 'factory' || max <= LEAST_STRIP) return 'nothing to cut off';
  const [low, high] = [lengths.coarse(Math.max(0, min)).text, lengths.coarse(max).text];
  return low === high ? `cut off ${high}` : `cut off ${low} to ${high}`;
}
