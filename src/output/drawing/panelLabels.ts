import type { Point } from '../../core';
import type { HoleDrawing, PanelDrawing, Place } from './drawing';
import { holeLines, markLines } from './labelLines';
import type { Label, Labelled } from './outsideLabels';
import { around } from './rectangle';

/** Labels of all marks and holes of a panel, on the sides nearest to them. */
export function panelLabels(drawing: PanelDrawing): Labelled {
  const at = (place: Place): Label[] => labelsAt(drawing, place);
  return {
    bounds: drawing.bounds,
    labels: { left: at('left'), right: at('right'), bottom: at('bottom'), top: at('top') },
  };
}

function labelsAt({ edges, holes, outline }: PanelDrawing, place: Place): Label[] {
  const marks = edges.filter((edge) => edge.place === place).flatMap((edge) => edge.marks);
  const labels = marks.map((mark) => ({ at: mark.at, lines: markLines(mark) }));
  if (place === 'bottom' || place === 'top') return labels;
  const { left, right } = around(outline);
  const middle = (left + right) / 2;
  const nearMiddle = 0.1 * (right - left);
  const besides = ({ centre: [x] }: HoleDrawing) => (x < middle - nearMiddle ? 'left' : 'right');
  const rim = ({ centre: [x, y], diameter }: HoleDrawing): Point => [
    x + ((place === 'left' ? -1 : 1) * diameter.mm) / 2,
    y,
  ];
  return [
    ...labels,
    ...holes.filter((hole) => besides(hole) === place).map((hole) => ({ at: rim(hole), lines: holeLines(hole) })),
  ];
}
