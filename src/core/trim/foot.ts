import type { Dual } from '../dual';
import type { Side } from '../job-file';
import { type ApronPoint, apronLine, farthestOut } from '../leg';
import { contourKinks, sampleEdge } from '../panel';
import { endOfStrip, overRimBy, type WallStrip } from '../piece';
import type { TrimSite } from './site';

/** A strip beside the tub narrower than this is left off, mm (common practice, no source). */
const LEAST_FOOT = 8;

/** A point of a vertical's lower end, wall coordinates, with the standard deviation of the cut there, mm. */
export interface FootPoint {
  u: number;
  v: number;
  sd: number;
}

/** The lower end of an upright strip, scribed to rim and apron, from its inner to its outer edge. */
export interface Foot {
  points: FootPoint[];
  /** true where it goes down to the floor beside the tub */
  onFloor: boolean;
}

/** @param inner, outer distances from the back wall of the strip's edges */
export function footLine(site: TrimSite, side: Side, strip: WallStrip, inner: number, outer: number): Foot {
  const { alcove, job, trim } = site;
  const { fit, rim } = job;
  const depths = trim.lip > 0 ? [-trim.lip, 0, trim.thickness] : [0, trim.thickness];
  const onRim = (u: number): Dual =>
    endOfStrip(strip, 'v', u, depths, overRimBy(alcove, rim, fit.rimJoint), 1, alcove.rim.value(0, u));
  const apron = apronLine(alcove, job, side, [site.panelFace, site.panelFace + trim.thickness]);
  const onFloor = trim.foot === 'floor' && outer - farthestOut(apron) - fit.rimJoint >= LEAST_FOOT;

  const edge = onFloor ? Math.min(rim.width + fit.rimJoint, outer) : outer;
  const overRim =
    inner >= edge
      ? []
      : sampleEdge(onRim, inner, edge, contourKinks(rim)).map(
          ({ along, at }): FootPoint => ({
            u: along,
            v: at,
            sd: Math.hypot(site.sd(onRim(along)), rim.contourSd),
          }),
        );
  if (!onFloor) return { points: thinned(overRim), onFloor };
  const floor = -job.levelAboveFloor + trim.floorGap;
  const beside = besideApron(apron, inner, fit.rimJoint, floor, rim.contourSd);
  return {
    points: [...thinned(overRim), ...beside, { u: outer, v: floor, sd: site.floorSd }],
    onFloor,
  };
}

/** Down the apron to the floor, never inside the strip's inner edge. */
function besideApron(
  apron: readonly ApronPoint[],
  inner: number,
  joint: number,
  floor: number,
  sd: number,
): FootPoint[] {
  const [first, ...rest] = apron;
  const start = first!.z + joint;
  const line = rest.flatMap(({ z, y }): FootPoint[] =>
    y.value > floor ? [{ u: Math.max(inner, z + joint), v: y.value, sd }] : [],
  );
  const above = apron.findLast(({ y }) => y.value > floor) ?? first!;
  const below = apron.find(({ y }) => y.value <= floor) ?? above;
  const share = above === below ? 0 : (above.y.value - floor) / (above.y.value - below.y.value);
  const last = above.z + share * (below.z - above.z) + joint;
  const foot: FootPoint = { u: Math.max(inner, last), v: floor, sd };
  return inner >= start && line.every(({ u }) => u === inner) ? [{ ...foot, u: inner }] : [...line, foot];
}

/** Leaves out samples that lie on the straight line between their neighbours to 0.01 mm. */
function thinned(points: FootPoint[]): FootPoint[] {
  const kept: FootPoint[] = [];
  points.forEach((point, i) => {
    const before = kept.at(-1);
    const after = points[i + 1];
    if (before !== undefined && after !== undefined) {
      const share = (point.u - before.u) / (after.u - before.u);
      if (Math.abs(before.v + share * (after.v - before.v) - point.v) < 0.01) return;
    }
    kept.push(point);
  });
  return kept;
}
