import type { EdgeName, PanelName, Result } from '../../src/core';
import type { TrueAlcove } from './trueAlcove';
import { type Build, trueEdge } from './trueEdge';

export interface MarkError {
  panel: PanelName;
  edge: EdgeName;
  along: number;
  /** where the mark lies across its edge, less where the edge truly lies, mm */
  error: number;
  /** as stated, mm */
  sd: number;
}

/** How far each mark of each panel lies off the edge that a true alcove has there, by the rules that the job builds by. */
export function markErrors(alcove: TrueAlcove, build: Build, panels: Result['panels']): MarkError[] {
  return (['back', 'left', 'right'] as const).flatMap((panel) =>
    Object.entries(panels[panel].edges).flatMap(([name, { marks }]) => {
      const edge = name as EdgeName;
      return marks.map(({ u, v, sd }): MarkError => {
        const [along, at] = edge === 'bottom' || edge === 'top' ? [u, v] : [v, u];
        return { panel, edge, along, error: at - trueEdge(alcove, build, panel, edge, along), sd };
      });
    }),
  );
}
