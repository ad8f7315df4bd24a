import { constant, type Dual, shift } from '../dual';
import type { Side } from '../job-file';
import type { Point } from '../panel';
import {
  type Body,
  counterClockwise,
  endOfStrip,
  levelOverSquare,
  levelStrip,
  makePiece,
  offBack,
  type Piece,
  type PieceEdge,
  type PieceEnd,
} from '../piece';
import { cornerAngle } from '../survey';
import { cutAngles, halfJoint } from './angle';
import { coverNotes, topCover } from './cover';
import { mitreLine } from './mitreLine';
import type { OuterLine } from './outerLine';
import type { TrimSite } from './site';
import { tapePlaces } from './tape';

/**
 * The piece along a side panel's top: level, from the top piece in the inside corner to the plumb outer line. Its back
 * end is bevelled to the corner's true angle, to butt against the top piece's face or to mitre with it.
 */
export function sideTop(site: TrimSite, side: Side, outer: OuterLine): Piece {
  const { alcove, trim, panelFace, lowerEdge, upperEdge, lipWidth } = site;
  const strip = levelStrip(alcove, side, panelFace, lowerEdge);
  const t = trim.thickness;
  const mitredBack = trim.joinery === 'mitre' && trim.top;
  const mitredFront = trim.joinery === 'mitre' && trim.verticals;

  const outerCorner = alcove[side].value(panelFace, upperEdge);
  const backAt = (height: number, w: number): Dual => {
    const square = levelOverSquare(alcove, 'back', outerCorner, height);
    const clearance = mitredBack
      ? w * square + halfJoint(trim.joint, cornerAngle(alcove, side, height).value)
      : (trim.top ? t * square : 0) + trim.joint;
    return endOfStrip(strip, 'u', height, [w], offBack(alcove, panelFace + clearance), 1, panelFace);
  };
  const frontAt = (height: number): Dual =>
    mitredFront ? shift(outer.at, mitreLine(site).sideTopFront(height)) : outer.at;
  const flat = (u: Dual, height: number): Point => strip.toFlat(u.value, height);
  const loop = (w: number, low: number): Point[] => [
    flat(backAt(low, w), low),
    flat(frontAt(low), low),
    flat(frontAt(upperEdge), upperEdge),
    flat(backAt(upperEdge, w), upperEdge),
  ];
  const turned = (points: Point[]): Point[] => (side === 'left' ? points.reverse() : points);
  const face = turned(loop(t, lowerEdge));
  const bodies: Body[] = [{ back: turned(loop(0, lowerEdge)), face, from: 0, to: t }];
  if (lipWidth > 0) {
    const low = upperEdge - lipWidth;
    bodies.push({ back: turned(loop(-trim.lip, low)), face: turned(loop(0, low)), from: -trim.lip, to: 0 });
  }

  const mark = (u: Dual, height: number) => ({ at: flat(u, height), sd: site.sd(u) });
  const edges: PieceEdge[] = [
    { name: 'back end', method: 'saw', marks: [lowerEdge, upperEdge].map((height) => mark(backAt(height, t), height)) },
    { name: 'front end', method: 'saw', marks: [lowerEdge, upperEdge].map((height) => mark(frontAt(height), height)) },
  ];
  const cover = topCover(site, site.panels[side]);
  return makePiece({
    id: `trim.${side}.top`,
    kind: 'side-top',
    name: `${side} side top`,
    wall: side,
    outline: counterClockwise(face),
    thickness: t,
    bodies,
    axis: 'x',
    edges,
    ends: [backEnd(), frontEnd()],
    stations: strip.stations(backAt(lowerEdge, 0).value, outer.at.value),
    tape: tapePlaces(face, 'x', trim.tapeSpacing),
    cover,
    stock: 'trim',
    notes: coverNotes(cover),
    cautions: ['saw', 'dust', 'adhesive'],
  });

  function backEnd(): PieceEnd {
    const outward = side === 'left' ? 1 : -1;
    const [below, above, behind] = [backAt(lowerEdge, t), backAt(upperEdge, t), backAt(lowerEdge, 0)];
    const [[x0, y0], [x1, y1]] = [flat(below, lowerEdge), flat(above, upperEdge)];
    return {
      name: 'back end',
      joint: mitredBack ? 'mitre' : 'butt',
      ...cutAngles({
        mitre: { run: outward * (x1 - x0), over: y1 - y0, ends: [below, above] },
        bevel: { run: outward * (flat(behind, lowerEdge)[0] - x0), over: t, ends: [behind, below] },
        sd: site.sd,
      }),
    };
  }

  function frontEnd(): PieceEnd {
    const outward = side === 'left' ? -1 : 1;
    const [[x0, y0], [x1, y1]] = [flat(frontAt(lowerEdge), lowerEdge), flat(frontAt(upperEdge), upperEdge)];
    return {
      name: 'front end',
      joint: mitredFront ? 'mitre' : 'butt',
      ...cutAngles({
        mitre: { run: outward * (x1 - x0), over: y1 - y0, ends: [constant(x0), constant(x1)] },
        bevel: null,
        sd: site.sd,
      }),
    };
  }
}
