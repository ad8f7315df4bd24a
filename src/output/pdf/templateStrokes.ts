import type { Point } from '../../core';
import type { PanelDrawing } from '../drawing';

/** Consecutive points as strokes. */
export const strokesOf = (path: Point[]): [Point, Point][] => path.slice(1).map((point, i) => [path[i]!, point]);

/**
 * Every line of a template that words had better keep clear of: cut edges, control lines, marks, holes as twelve-sided
 * figures.
 */
export function templateStrokes({ outline, levelLine, plumbDatum, holes, edges }: PanelDrawing): [Point, Point][] {
  const round = (hole: PanelDrawing['holes'][number]) => {
    const {
      centre: [x, y],
      diameter: { mm },
    } = hole;
    return strokesOf(
      Array.from({ length: 13 }, (_, i): Point => {
        const angle = (i * Math.PI) / 6;
        return [x + (mm / 2) * Math.cos(angle), y + (mm / 2) * Math.sin(angle)];
      }),
    );
  };
  const ticks = ({ marks, place }: PanelDrawing['edges'][number]) => {
    const [x, y] = place === 'left' || place === 'right' ? [5, 0] : [0, 5];
    return marks.map(({ at }): [Point, Point] => [
      [at[0] - x, at[1] - y],
      [at[0] + x, at[1] + y],
    ]);
  };
  return [
    ...strokesOf([...outline, outline[0]!]),
    levelLine.line,
    plumbDatum.line,
    ...holes.flatMap(round),
    ...edges.flatMap(ticks),
  ];
}
