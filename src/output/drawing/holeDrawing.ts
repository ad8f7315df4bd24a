import { holeTool, type PanelHole, type Point } from '../../core';
import type { ControlLines } from './controlLines';
import type { EdgeDrawing, HoleDrawing } from './drawing';
import type { Lengths } from './lengths';
import type { Orientation } from './orientation';

const kindWords: Record<string, string> = {
  valve: 'valve',
  spout: 'spout',
  'shower-head': 'shower head',
  'hand-shower': 'hand shower',
  'body-spray': 'body spray',
  'grab-bar': 'grab bar',
  other: 'hole',
};

const fromOf: Record<PanelHole['from']['of'], string> = {
  panel: "from the back panel's face",
  wall: 'from the bare back wall',
  'plumb-line': 'from the plumb line',
};

/** One hole as drawn, with its distances to the control lines and to the cut edges. */
export function holeDrawing(
  hole: PanelHole,
  edges: EdgeDrawing[],
  lines: ControlLines,
  lengths: Lengths,
  orientation: Orientation,
  advice: string[],
): HoleDrawing {
  const kind = kindWords[hole.kind] ?? hole.kind;
  const centre = orientation.point(hole.sheet);
  const up = lines.up(centre);
  const right = lines.across(centre);
  const { fine, plusMinus } = lengths;
  const beside = edges.find(({ name }) => name === 'back' || name === 'left');
  const toSide = beside && crossing(beside.path, centre, 1);
  const bottom = edges.find(({ name }) => name === 'bottom');
  const toBottom = bottom && crossing(bottom.path, centre, 0);
  const fromDatum = fine(Math.abs(right));
  const fromLevel = fine(Math.abs(up));
  const aboveRim = fine(Math.abs(hole.aboveRim));
  const from = fine(Math.abs(hole.from.distance));
  return {
    id: hole.id,
    name: hole.id.toLowerCase().includes(kind) ? hole.id : `${hole.id} (${kind})`,
    kind,
    centre,
    diameter: fine(hole.diameter),
    fromDatum,
    fromLevel,
    side: { across: right < 0 ? 'left' : 'right', up: up < 0 ? 'below' : 'above' },
    plusMinus: { across: plusMinus(hole.sd.u), up: plusMinus(hole.sd.v) },
    fromEdge:
      beside && toSide != null
        ? { title: beside.title.toLowerCase(), distance: fine(Math.abs(centre[0] - toSide)) }
        : null,
    fromBottom: toBottom == null ? null : fine(centre[1] - toBottom),
    aboveRim,
    aboveRimWords: `${aboveRim.text} ${hole.aboveRim < 0 ? 'below' : 'above'} finished rim`,
    from,
    fromWords: `${from.text} ${fromOf[hole.from.of]}`,
    edgeDistance: fine(hole.edgeDistance),
    toolWords: toolWords(hole.diameter, lengths),
    advice,
  };
}

function toolWords(diameter: number, { unit, fine }: Lengths): string {
  const tool = holeTool(diameter, unit);
  if (tool.how === 'jigsaw') return `jigsaw, back up, from a ${fine(tool.pilot).text} pilot hole inside the line`;
  return `${fine(tool.diameter).text} ${tool.how === 'drill' ? 'drill, from the face onto a scrap board' : 'hole saw, from the back until its pilot comes through, then from the face'}`;
}

/** Where a path crosses the level (axis 1) or the upright (axis 0) through a point: the other coordinate. */
function crossing(path: Point[], at: Point, axis: 0 | 1): number | null {
  const other = axis === 0 ? 1 : 0;
  for (let i = 1; i < path.length; i++) {
    const [a, b] = [path[i - 1]!, path[i]!];
    const [low, high] = [a[axis] - at[axis], b[axis] - at[axis]];
    if (low === 0) return a[other];
    if (low * high <= 0) return a[other] + (low / (low - high)) * (b[other] - a[other]);
  }
  return null;
}
