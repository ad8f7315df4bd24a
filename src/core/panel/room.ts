import { larger, shift } from '../dual';
import type { Boundary } from './boundary';
import type { PanelEdges } from './edges';
import type { PanelName, Problem } from './panel';

/** A panel that the readings leave less than this is drawn this wide or high there, and reported, mm. */
export const LEAST_ROOM = 50;

/** The same edges, the far side and the top moved out where they leave no room, so that the panel never folds over. */
export function withRoom(edges: PanelEdges): PanelEdges {
  const { lower, upper, bottom, top } = edges;
  return {
    ...edges,
    upper: { ...upper, at: (height) => larger(upper.at(height), shift(lower.at(height), LEAST_ROOM)) },
    top: (along) => larger(top(along), shift(bottom(along), LEAST_ROOM)),
  };
}

/** Where the edges as they are leave the panel no width or no height, and what to do. */
export function roomProblems(edges: PanelEdges, boundary: Boundary, name: PanelName): Problem[] {
  const width = Math.min(
    ...boundary.upper.samples.map(({ along }) => edges.upper.at(along).value - edges.lower.at(along).value),
  );
  const height = Math.min(...boundary.bottom.samples.map(({ along, at }) => edges.top(along).value - at));
  const where = `panels.${name}`;
  const problems: Problem[] = [];
  if (width < LEAST_ROOM) {
    const what =
      name === 'back'
        ? 'the corners leave the panel no width; check the readings to them'
        : 'the front edge leaves the panel no depth; check the depth readings and the set-back';
    problems.push({ where, what, howMuch: width });
  }
  if (height < LEAST_ROOM) {
    const what = 'the top is no higher than the rim; raise the top or check the drops to the rim';
    problems.push({ where, what, howMuch: height });
  }
  return problems;
}
