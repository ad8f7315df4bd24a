import { type Dual, subtract } from '../dual';
import { SIDES, type Side } from '../job-file';
import type { Point } from '../panel';
import {
  type Body,
  endOfStrip,
  levelOverSquare,
  levelStrip,
  makePiece,
  offSide,
  type Piece,
  type PieceEdge,
  type PieceEnd,
  type WallStrip,
} from '../piece';
import { cornerAngle } from '../survey';
import { cutAngles, halfJoint } from './angle';
import { coverNotes, topCover } from './cover';
import { standsAbove, type TrimSite } from './site';
import { tapePlaces } from './tape';

/** What stands above the notches is left off where it is lower than this, mm. */
const LEAST_UPPER = 3;

/** Ends of the piece at one side: u at a height and a depth w out of the strip's back. */
type EndAt = (height: number, w: number) => Dual;

/**
 * The piece along the back wall: level, over the back panel's top. Butted, it runs from side wall to side wall, with a
 * notch over each side panel (without one where it stands wholly above them); mitred, each end is cut on the plane that
 * halves the corner of the panels' faces.
 */
export function topPiece(site: TrimSite): Piece {
  const { alcove, bare, job, trim, panelFace, lowerEdge, upperEdge, lipWidth } = site;
  const strip = levelStrip(alcove, 'back', panelFace, lowerEdge);
  const mitred = trim.joinery === 'mitre' && trim.sideTops;
  const notchTop = job.fit.top + trim.joint;
  const above = !mitred && standsAbove(site);
  const notched = !mitred && !above && upperEdge - notchTop >= LEAST_UPPER;
  const depths = [0, trim.thickness];

  const endAt = (side: Side, clearance: number, ws: readonly number[], height: number, walls = alcove): Dual =>
    endOfStrip(
      strip,
      'u',
      height,
      ws,
      offSide(walls, side, clearance),
      side === 'left' ? 1 : -1,
      walls[side].value(0, height),
    );
  const atWall =
    (side: Side): EndAt =>
    (height) =>
      endAt(side, trim.joint, [...depths, -trim.lip], height, bare);
  const atMitre =
    (side: Side): EndAt =>
    (height, w) => {
      const square = levelOverSquare(alcove, side, panelFace, height);
      const half = halfJoint(trim.joint, cornerAngle(alcove, side, height).value);
      return endAt(side, panelFace + w * square + half, [w], height);
    };
  const atPanel =
    (side: Side): EndAt =>
    (height) =>
      endAt(side, panelFace + trim.joint, depths, height);
  const lowerEnd = mitred ? atMitre : above ? atWall : atPanel;
  const upperEnd = notched ? atWall : lowerEnd;

  const corners = (side: Side, w: number): { height: number; u: Dual }[] => {
    const [lower, upper] = [lowerEnd(side), upperEnd(side)];
    if (!notched) return [lowerEdge, upperEdge].map((height) => ({ height, u: lower(height, w) }));
    return [
      ...[lowerEdge, notchTop].map((height) => ({ height, u: lower(height, w) })),
      ...[notchTop, upperEdge].map((height) => ({ height, u: upper(height, w) })),
    ];
  };
  const loopAt = (w: number): Point[] => [
    ...corners('right', w).map(({ height, u }) => strip.toFlat(u.value, height)),
    ...corners('left', w)
      .reverse()
      .map(({ height, u }) => strip.toFlat(u.value, height)),
  ];

  const face = loopAt(trim.thickness);
  const bodies: Body[] = [{ back: loopAt(0), face, from: 0, to: trim.thickness }];
  if (lipWidth > 0) bodies.push(lipOf(site, strip, upperEnd('left'), upperEnd('right')));
  const edges = SIDES.map(
    (side): PieceEdge => ({
      name: `${side} end`,
      method: 'saw',
      marks: corners(side, trim.thickness).map(({ height, u }) => ({
        at: strip.toFlat(u.value, height),
        sd: site.sd(u),
      })),
    }),
  );
  const cover = topCover(site, site.panels.back);
  return makePiece({
    id: 'trim.top',
    kind: 'top',
    name: 'top piece',
    wall: 'back',
    outline: face,
    thickness: trim.thickness,
    bodies,
    axis: 'x',
    edges,
    ends: SIDES.map((side) => endOf(site, strip, side, lowerEnd(side), mitred)),
    notches: notched ? SIDES.map((side) => notchOf(site, side, corners(side, 0))) : [],
    stations: strip.stations(corners('left', 0)[0]!.u.value, corners('right', 0)[0]!.u.value),
    tape: tapePlaces(face, 'x', trim.tapeSpacing),
    cover,
    stock: 'trim',
    notes: coverNotes(cover),
    cautions: ['saw', 'dust', 'adhesive'],
  });
}

function lipOf({ trim, upperEdge, lipWidth }: TrimSite, strip: WallStrip, left: EndAt, right: EndAt): Body {
  const loop = (w: number): Point[] => {
    const point = (end: EndAt, height: number): Point => strip.toFlat(end(height, w).value, height);
    const low = upperEdge - lipWidth;
    return [point(left, low), point(right, low), point(right, upperEdge), point(left, upperEdge)];
  };
  return { back: loop(-trim.lip), face: loop(0), from: -trim.lip, to: 0 };
}

function endOf(site: TrimSite, strip: WallStrip, side: Side, at: EndAt, mitred: boolean): PieceEnd {
  const { lowerEdge, upperEdge, trim, job } = site;
  const outward = side === 'left' ? -1 : 1;
  const t = trim.thickness;
  const panelTop = Math.min(upperEdge, job.fit.top);
  const high = mitred || panelTop <= lowerEdge ? upperEdge : panelTop;
  const [below, above, behind] = [at(lowerEdge, t), at(high, t), at(lowerEdge, 0)];
  const [[x0, y0], [x1, y1]] = [strip.toFlat(below.value, lowerEdge), strip.toFlat(above.value, high)];
  const [xBack] = strip.toFlat(behind.value, lowerEdge);
  return {
    name: `${side} end`,
    joint: mitred ? 'mitre' : 'butt',
    ...cutAngles({
      mitre: { run: outward * (x1 - x0), over: y1 - y0, ends: [below, above] },
      bevel: mitred ? { run: outward * (xBack - x0), over: t, ends: [behind, below] } : null,
      sd: site.sd,
    }),
  };
}

function notchOf({ sd, job, lowerEdge, trim }: TrimSite, side: Side, corners: { u: Dual }[]) {
  const [, below, above] = corners;
  return {
    corner: `lower ${side}`,
    along: Math.abs(below!.u.value - above!.u.value),
    across: job.fit.top + trim.joint - lowerEdge,
    sd: sd(subtract(below!.u, above!.u)),
  };
}
