import { type Alcove, towardsRoom } from '../alcove';
import { add, constant, type Dual, fixedPoint, larger, scale, shift, smaller, subtract } from '../dual';
import type { Job, Shelf } from '../job-file';
import { contourRise, type EdgeAt, type Point } from '../panel';
import { cross, dot, type Frame, plus, unit, type Vec3 } from '../piece';

/** The plane of a shelf's top and where the shelf's edges run in it. All mm. */
export interface ShelfPlane {
  /** where the panels' faces meet at the shelf's top; y is the height of the top in the corner */
  corner: { x: Dual; y: Dual; z: Dual };
  /** level directions away from the corner, along the back panel's face and along the side panel's */
  alongBack: Vec3;
  alongSide: Vec3;
  /** flat coordinates: origin in the corner on the top, w up out of it */
  frame: Frame;
  /** height of the top at a place */
  topAt(x: Dual, z: Dual): Dual;
  /** z of the back edge at each x, x of the side edge at each z: a gap off the panels' faces */
  backEdge: EdgeAt;
  sideEdge: EdgeAt;
  /** the point of the top at a place, as flat coordinates */
  toFlat(x: number, z: number): Point;
}

/** Distance off its wall of the face that the shelf stands against. */
export const faceOff = ({ fit }: Job): number => fit.bed + fit.thickness;

/** The top falls from the corner along the level line that halves it. */
export function shelfPlane(alcove: Alcove, job: Job, shelf: Shelf): ShelfPlane {
  const side = shelf.corner;
  const inward = towardsRoom(side);
  const off = faceOff(job);
  const cornerAt = (y: Dual) => {
    const x = fixedPoint(
      (x) => shift(alcove[side].at(shift(alcove.back.at(x, y), off), y), inward * off),
      alcove[side].value(0, y.value),
    );
    return { x, y, z: shift(alcove.back.at(x, y), off) };
  };
  const height = fixedPoint((y) => {
    const { x, z } = cornerAt(y);
    return shift(add(alcove.rim.at(x, z), contourRise(job.rim, z)), shelf.aboveRim);
  }, alcove.rim.value(0, 0) + shelf.aboveRim);
  const corner = cornerAt(height);
  const [cx, cy, cz] = [corner.x.value, corner.y.value, corner.z.value];

  const alongBack = unit([inward, 0, inward * alcove.back.gradient(cx, cy)[0]]);
  const alongSide = unit([alcove[side].gradient(cz, cy)[0], 0, 1]);
  const [fallX, , fallZ] = plus([0, 0, 0], unit(plus(alongBack, alongSide)), shelf.slope / 1000);
  const w = unit([fallX, 1, fallZ]);
  const x = unit(plus([1, 0, 0], w, -w[0]));
  const frame: Frame = { origin: [cx, cy, cz], x, y: cross(w, x), w };
  const topAt = (px: Dual, pz: Dual): Dual =>
    subtract(corner.y, add(scale(subtract(px, corner.x), fallX), scale(subtract(pz, corner.z), fallZ)));

  const depths = [0, shelf.thickness];
  const backEdge: EdgeAt = (along) => {
    const px = constant(along);
    return depths
      .map((depth) =>
        fixedPoint((pz) => {
          const y = shift(topAt(px, pz), -depth * w[1]);
          return shift(alcove.back.at(shift(px, -depth * w[0]), y), off + shelf.gap + depth * w[2]);
        }, cz),
      )
      .reduce(larger);
  };
  const sideEdge: EdgeAt = (along) => {
    const pz = constant(along);
    return depths
      .map((depth) =>
        fixedPoint((px) => {
          const y = shift(topAt(px, pz), -depth * w[1]);
          const face = alcove[side].at(shift(pz, -depth * w[2]), y);
          return shift(face, inward * (off + shelf.gap) + depth * w[0]);
        }, cx),
      )
      .reduce(side === 'left' ? larger : smaller);
  };
  const toFlat = (px: number, pz: number): Point => {
    const point = plus([px, topAt(constant(px), constant(pz)).value, pz], frame.origin, -1);
    return [dot(point, frame.x), dot(point, frame.y)];
  };
  return { corner, alongBack, alongSide, frame, topAt, backEdge, sideEdge, toFlat };
}
