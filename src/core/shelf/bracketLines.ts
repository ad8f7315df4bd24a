import { constant, type Dual, shift } from '../dual';
import type { Shelf } from '../job-file';
import { type Point, towardsRoom } from '../panel';
import type { ShelfEnds } from './fitShelf';
import type { BracketLine } from './shelf';
import type { ShelfPlane } from './shelfPlane';

/** Lines along the shelf's underside where it meets the panels' faces. */
export function bracketLines(
  shelf: Shelf,
  plane: ShelfPlane,
  ends: ShelfEnds,
  sd: (quantity: Dual) => number,
): BracketLine[] {
  const { corner, frame, topAt } = plane;
  const underside = shelf.thickness / frame.w[1];
  const off = shelf.gap;
  const heightAt = (x: number, z: number): Dual => shift(topAt(constant(x), constant(z)), -underside);
  const line = (wall: 'back' | 'left' | 'right', [a, b]: readonly [Place, Place]): BracketLine => {
    const at = ({ x, z }: Place): Point => [wall === 'back' ? x : z, heightAt(x, z).value];
    const [from, to] = [at(a), at(b)];
    return {
      wall,
      from,
      to,
      slope: (1000 * (to[1] - from[1])) / Math.hypot(b.x - a.x, b.z - a.z),
      sd: sd(heightAt(b.x, b.z)),
    };
  };
  const inward = towardsRoom(shelf.corner);
  const start = { x: corner.x.value, z: corner.z.value };
  return [
    line('back', [start, { x: ends.back.x, z: ends.back.z - off }]),
    line(shelf.corner, [start, { x: ends.side.x - inward * off, z: ends.side.z }]),
  ];
}

interface Place {
  x: number;
  z: number;
}
