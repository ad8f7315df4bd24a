import type { Region } from '../flatten';
import { extent } from '../range';
import type { EdgeAt } from './clearance';
import { type EdgeSample, sampleEdge } from './curve';
import type { PanelEdges } from './edges';
import { meet } from './meet';
import type { EdgeName, Point } from './panel';

/** One edge of a panel before it is cut, between the corners where it meets its neighbours. */
export interface BoundaryEdge {
  name: EdgeName;
  /** true where the edge runs along v (its position is u), false where it runs along u */
  upright: boolean;
  at: EdgeAt;
  /** places along it where it turns sharply */
  kinks: readonly number[];
  /** from low to high */
  samples: EdgeSample[];
}

/** The edges around a panel: at low u, at high u, below and above. */
export interface Boundary {
  lower: BoundaryEdge;
  upper: BoundaryEdge;
  bottom: BoundaryEdge;
  top: BoundaryEdge;
}

/** The four edges, sampled between the corners where they meet. */
export function boundaryOf({ lower, upper, bottom, bottomKinks, top }: PanelEdges): Boundary {
  const corner = (side: EdgeAt, level: EdgeAt): Point => meet(side, level, level(side(0).value).value);
  const lowerBottom = corner(lower.at, bottom);
  const upperBottom = corner(upper.at, bottom);
  const lowerTop = corner(lower.at, top);
  const upperTop = corner(upper.at, top);
  const edge = (
    name: EdgeName,
    at: EdgeAt,
    upright: boolean,
    [from, to]: [Point, Point],
    kinks: readonly number[] = [],
  ): BoundaryEdge => {
    const axis = upright ? 1 : 0;
    return { name, upright, at, kinks, samples: sampleEdge(at, from[axis], to[axis], kinks) };
  };
  return {
    lower: edge(lower.name, lower.at, true, [lowerBottom, lowerTop]),
    upper: edge(upper.name, upper.at, true, [upperBottom, upperTop]),
    bottom: edge('bottom', bottom, false, [lowerBottom, upperBottom], bottomKinks),
    top: edge('top', top, false, [lowerTop, upperTop]),
  };
}

export const wallPoint = ({ upright }: Pick<BoundaryEdge, 'upright'>, { along, at }: EdgeSample): Point =>
  upright ? [at, along] : [along, at];

/** Counter-clockwise in (u, v): along the bottom, up the far side, back along the top, down. Corners once each. */
export function outlineOf({ lower, upper, bottom, top }: Boundary): Point[] {
  const points = (edge: BoundaryEdge, samples: EdgeSample[]): Point[] =>
    samples.slice(0, -1).map((each) => wallPoint(edge, each));
  return [
    ...points(bottom, bottom.samples),
    ...points(upper, upper.samples),
    ...points(top, [...top.samples].reverse()),
    ...points(lower, [...lower.samples].reverse()),
  ];
}

/** Rectangle of wall coordinates around an outline. */
export function regionOf(outline: readonly Point[]): Region {
  return { u: extent(outline, 0), v: extent(outline, 1) };
}
