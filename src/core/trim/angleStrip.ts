import { towardsRoom } from '../alcove';
import { constant } from '../dual';
import type { Side } from '../job-file';
import { againstBack, besideWall, contourRise, overRim, type Point } from '../panel';
import {
  type Body,
  counterClockwise,
  cross,
  dot,
  type Fold,
  type Frame,
  fold,
  length,
  makePiece,
  type Piece,
  plus,
  type Station,
  unit,
  type Vec3,
} from '../piece';
import { spaced } from '../range';
import { SQUARE } from './angle';
import type { TrimSite } from './site';
import { tapePlaces } from './tape';

const STEPS = 24;

/**
 * The angle strip up an inside corner, one flange on each panel's face, bent to the corner's true angle; from the rim to
 * the trim above. Its flat shape is the flange on the back panel.
 */
export function angleStrip(site: TrimSite, side: Side): Piece {
  const { alcove, job, trim } = site;
  const { width, thickness } = trim.angleStrip;
  const inward = towardsRoom(side);
  const faces = [site.panelFace, site.panelFace + thickness];
  const foot = overRim(alcove, job.rim, 'back', faces, job.fit.rimJoint)(besideWall(alcove, side, faces, 0)(0).value);
  const under = trim.top || trim.sideTops;
  const head = under ? site.lowerEdge - trim.joint : job.fit.top;
  const stations = cornerStations(site, side, foot.value, head);
  const place = fold({ axis: 'y', stations });
  const flange = sideFlange(site, side, stations[STEPS / 2]!.frame, (foot.value + head) / 2);

  const corner = (x: number, w: number, end: 'foot' | 'head'): Point => [
    x,
    end === 'head' ? heightOn(place, x, w, () => head) : heightOn(place, x, w, overRimAt(site)),
  ];
  const loop = (from: number, to: number, w: number): Point[] => [
    corner(from, w, 'foot'),
    corner(to, w, 'foot'),
    corner(to, w, 'head'),
    corner(from, w, 'head'),
  ];
  const turned = (points: Point[]): Point[] => (side === 'right' ? points.reverse() : points);
  const backFlange = (w: number): Point[] => turned(loop(flange.inner(w), inward * width, w));
  const sideLoop = (w: number): Point[] => turned(loop(flange.inner(w), flange.outer(w), w));
  const face = backFlange(thickness);
  const bodies: Body[] = [
    { back: backFlange(0), face, from: 0, to: thickness },
    { back: sideLoop(thickness), face: sideLoop(width), from: thickness, to: width },
  ];
  const sd = site.sd(foot);
  return makePiece({
    id: `trim.${side}.corner`,
    kind: 'angle',
    name: `${side} inside corner`,
    wall: 'back',
    outline: counterClockwise(face),
    thickness,
    bodies,
    axis: 'y',
    edges: [
      {
        name: 'foot',
        method: 'saw',
        marks: [0, inward * width].map((x) => ({ at: corner(x, thickness, 'foot'), sd })),
      },
      {
        name: 'head',
        method: 'saw',
        marks: [0, inward * width].map((x) => ({ at: corner(x, thickness, 'head'), sd: 0 })),
      },
    ],
    ends: [
      { name: 'foot', joint: 'scribe', mitre: SQUARE, bevel: SQUARE },
      { name: 'head', joint: 'butt', mitre: SQUARE, bevel: SQUARE },
    ],
    stations,
    tape: tapePlaces(face, 'y', trim.tapeSpacing),
    stock: 'angle-strip',
    cautions: ['saw', 'adhesive'],
  });
}

/** Frames up the line where the panels' faces meet; w is square out of the back panel's face. */
function cornerStations({ alcove, panelFace }: TrimSite, side: Side, from: number, to: number): Station[] {
  const x = besideWall(alcove, side, [panelFace], panelFace);
  const z = againstBack(alcove, side, [panelFace], panelFace);
  const corner = (height: number): Vec3 => [x(height).value, height, z(height).value];
  const frameAt = (height: number): Frame => {
    const y = unit(plus(corner(height + 1), corner(height - 1), -1));
    const [slopeU, slopeV] = alcove.back.gradient(corner(height)[0], height);
    const out: Vec3 = [-slopeU, -slopeV, 1];
    const w = unit(plus(out, y, -dot(out, y)));
    return { origin: corner(height), x: cross(y, w), y, w };
  };
  const heights = spaced(from, to, STEPS + 1);
  let at = Math.sign(heights[0]!) * length(plus(corner(heights[0]!), corner(0), -1));
  return heights.map((height, k) => {
    if (k > 0) at += length(plus(corner(height), corner(heights[k - 1]!), -1));
    return { at, frame: frameAt(height) };
  });
}

/** The flange on the side panel, in the section across the strip: x of its two faces at each w. */
function sideFlange({ alcove, panelFace, trim }: TrimSite, side: Side, frame: Frame, height: number) {
  const [slope] = alcove[side].gradient(panelFace, height);
  const out: Vec3 = [slope, 0, 1];
  const along = unit(plus(out, frame.y, -dot(out, frame.y)));
  const [dx, dw] = [dot(along, frame.x), dot(along, frame.w)];
  const inner = (w: number): number => (w * dx) / dw;
  return { inner, outer: (w: number) => inner(w) + (towardsRoom(side) * trim.angleStrip.thickness) / dw };
}

/** y at which the strip's point (x, y, w) stands at the wanted height. */
function heightOn(place: Fold, x: number, w: number, wanted: (point: Vec3) => number): number {
  let y = 0;
  for (let step = 0; step < 8; step++) {
    const point = place(x, y, w);
    y += wanted(point) - point[1];
  }
  return y;
}

const overRimAt =
  ({ alcove, job }: TrimSite) =>
  ([x, , z]: Vec3): number =>
    alcove.rim.value(x, z) + contourRise(job.rim, constant(z)).value + job.fit.rimJoint;
