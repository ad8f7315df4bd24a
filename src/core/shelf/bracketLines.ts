import { type Alcove, towardsRoom } from '../alcove';
import { constant, type Dual, shift } from '../dual';
import type { Job, Shelf } from '../job-file';
import type { Point } from '../panel';
import type { ShelfEnds } from './fitShelf';
import type { BracketLine } from './shelf';
import { faceOff, type ShelfPlane } from './shelfPlane';

interface Place {
  x: number;
  z: number;
}

/** Lines along the shelf's underside where it meets the panels' faces. */
export function bracketLines(
  alcove: Alcove,
  job: Job,
  shelf: Shelf,
  { corner, frame, topAt }: ShelfPlane,
  ends: ShelfEnds,
  sd: (quantity: Dual) => number,
): BracketLine[] {
  const side = shelf.corner;
  const off = faceOff(job);
  const underside = shelf.thickness / frame.w[1];
  const heightAt = ({ x, z }: Place): Dual => shift(topAt(constant(x), constant(z)), -underside);
  const onBack = (x: number): Place =>
    settled({ x, z: corner.z.value }, (at) => ({ x, z: alcove.back.value(x, heightAt(at).value) + off }));
  const onSide = (z: number): Place =>
    settled({ x: corner.x.value, z }, (at) => ({
      x: alcove[side].value(z, heightAt(at).value) + towardsRoom(side) * off,
      z,
    }));

  const line = (wall: BracketLine['wall'], a: Place, b: Place): BracketLine => {
    const at = (place: Place): Point => [wall === 'back' ? place.x : place.z, heightAt(place).value];
    const [from, to] = [at(a), at(b)];
    const run = Math.hypot(b.x - a.x, b.z - a.z);
    return { wall, from, to, slope: (1000 * (to[1] - from[1])) / run, sd: sd(heightAt(b)) };
  };
  return [
    line('back', onBack(corner.x.value), onBack(ends.back.x)),
    line(side, onSide(corner.z.value), onSide(ends.side.z)),
  ];
}

/** The place on a leaning face at the height that the place itself has; slopes are small, so a few rounds settle it. */
function settled(start: Place, next: (at: Place) => Place): Place {
  let place = start;
  for (let round = 0; round < 4; round++) place = next(place);
  return place;
}
