import { constant, type Dual, larger, shift } from '../dual';
import type { Side } from '../job-file';
import { type EdgeAt, frontLine, overRim } from '../panel';
import { overhangOf, type TrimLines } from './site';

/** The plumb line at which a side's trim ends at the front. */
export interface OuterLine {
  /** distance from the back wall */
  at: Dual;
  /** the panel's front edge, and the leg's in line with it */
  panelEdge: EdgeAt;
  /** true where a leg goes on below the panel, in line with it */
  withLeg: boolean;
  /** heights between which that edge is there */
  low: number;
  high: number;
  /** positions of the edge at both ends */
  edges: readonly [Dual, Dual];
  /** how far the line stands past the wall's own front edge, at most; 0 where it does not */
  pastWall: number;
}

/**
 * Plumb line past the front edge of a side's panel and leg where that stands out most: the edge follows the wall, which
 * is seldom plumb.
 */
export function outerLine(site: TrimLines, side: Side, withLeg: boolean): OuterLine {
  const { alcove, job, trim } = site;
  const { fit, rim } = job;
  const panelEdge = frontLine(alcove, side, fit.frontSetBack);
  const rimEdge = overRim(alcove, rim, side, [site.panelBack, site.panelFace], fit.rimJoint)(rim.width).value;
  const low = withLeg ? -job.levelAboveFloor + job.legs.floorGap : rimEdge;
  const high = fit.top;
  const edges = [panelEdge(low), panelEdge(high)] as const;
  const given = trim.outerLine[side];
  const at = given === undefined ? shift(larger(edges[0], edges[1]), overhangOf(site)) : constant(given);
  const walls = [low, high].map((height) => alcove.front[side].value(0, height));
  return { at, panelEdge, withLeg, low, high, edges, pastWall: Math.max(0, at.value - Math.min(...walls)) };
}
