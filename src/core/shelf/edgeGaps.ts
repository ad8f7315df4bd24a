import { type Alcove, towardsRoom } from '../alcove';
import { constant } from '../dual';
import type { Job, Shelf } from '../job-file';
import type { ShelfEnds } from './fitShelf';
import type { ShelfPiece } from './shelf';
import { faceOff, type ShelfPlane } from './shelfPlane';

const STEPS = 12;

/** Clearance between each straight-cut edge and its panel's face, level, at top and underside along the whole edge. */
export function edgeGaps(
  alcove: Alcove,
  job: Job,
  shelf: Shelf,
  { frame, topAt }: ShelfPlane,
  { inner, back, side }: ShelfEnds,
): ShelfPiece['gaps'] {
  const off = faceOff(job);
  const inward = towardsRoom(shelf.corner);
  const along = (
    a: { x: number; z: number },
    b: { x: number; z: number },
    clear: (x: number, y: number, z: number) => number,
  ) =>
    Array.from({ length: STEPS + 1 }, (_, k) => k / STEPS).flatMap((share) => {
      const [x, z] = [a.x + share * (b.x - a.x), a.z + share * (b.z - a.z)];
      const y = topAt(constant(x), constant(z)).value;
      return [0, shelf.thickness].map((depth) =>
        clear(x - depth * frame.w[0], y - depth * frame.w[1], z - depth * frame.w[2]),
      );
    });
  const backGaps = along(inner, back, (x, y, z) => z - alcove.back.value(x, y) - off);
  const sideGaps = along(inner, side, (x, y, z) => inward * (x - alcove[shelf.corner].value(z, y)) - off);
  return [
    { wall: 'back', min: Math.min(...backGaps), max: Math.max(...backGaps) },
    { wall: shelf.corner, min: Math.min(...sideGaps), max: Math.max(...sideGaps) },
  ];
}
