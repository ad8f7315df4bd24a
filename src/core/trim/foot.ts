import type { Dual } from '../dual';
import type { Side } from '../job-file';
import { type ApronPoint, apronLine, farthestOut } from '../leg';
import { contourKinks, sampleEdge } from '../panel';
import { endOfStrip, overRimBy, type WallStrip } from '../piece';
import type { TrimLines, TrimSite } from './site';

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
  const onFloor = goesToFloor(site, apron, outer);

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

/** Whether a vertical that ends at `outer` goes on beside the apron down to the floor. */
export const goesToFloor = ({ job, trim }: TrimLines, apron: readonly ApronPoint[], outer: number): boolean =>
  trim.foot === 'floor' && outer - farthestOut(apron) - job.fit.rimJoint >= LEAST_FOOT;

/** Down the apron to the floor, never inside the strip's inner edge. */
function besideApron(
  apron: readonly ApronPoint[],
  inner: number,
  joint: number,
  floor: number,
  sd: number,
): FootPoint[] {
  const [first, ...rest] = apron;
  const leans = rest[0] !== undefined && rest[0].z !== first!.z;
  const above = apron.findLast(({ y }) => y.value > floor) ?? first!;
  const below = apron.find(({ y }) => y.value <= floor) ?? above;
  const share = above === below ? 0 : (above.y.value - floor) / (above.y.value - below.y.value);
  const line = (leans ? apron : rest).flatMap(({ z, y }): FootPoint[] =>
    y.value > floor ? [{ u: z + joint, v: y.value, sd }] : [],
  );
  const down = notInside([...line, { u: above.z + share * (below.z - above.z) + joint, v: floor, sd }], inner);
  return first!.z + joint <= inner && down.every(({ u }) => u === inner) ? down.slice(-1) : down;
}

/** A line with what of it lies inside an upright moved out onto that upright. */
function notInside(line: readonly FootPoint[], inner: number): FootPoint[] {
  const moved = line.flatMap((point, i): FootPoint[] => {
    const before = line[i - 1];
    const out = { ...point, u: Math.max(inner, point.u) };
    if (before === undefined || (before.u - inner) * (point.u - inner) >= 0) return [out];
    const share = (before.u - inner) / (before.u - point.u);
    return [{ ...point, u: inner, v: before.v + share * (point.v - before.v) }, out];
  });
  return moved.filter(({ u }, i) => u > inner || moved[i - 1]?.u !== inner || moved[i + 1]?.u !== inner);
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
