import type { Point } from '../panel';
import type { Frame, Piece, Station } from './piece';
import { between, plus, type Vec3 } from './vector';

/** Flat coordinates (x, y) and w off the back to the place in the alcove, all mm. */
export type Fold = (x: number, y: number, w: number) => Vec3;

/** Where every point of a piece comes to lie in the alcove: between stations frames are interpolated. */
export function fold({ axis, stations }: Pick<Piece, 'axis' | 'stations'>): Fold {
  return (x, y, w) => {
    const along = axis === 'x' ? x : y;
    const { frame, past } = frameAt(stations, along);
    const across = axis === 'x' ? plus(frame.origin, frame.y, y) : plus(frame.origin, frame.x, x);
    return plus(plus(across, axis === 'x' ? frame.x : frame.y, past), frame.w, w);
  };
}

/** A piece's face, as points of the alcove. */
export function foldedOutline(piece: Piece): Vec3[] {
  const place = fold(piece);
  return piece.outline.map(([x, y]: Point) => place(x, y, piece.thickness));
}

function frameAt(stations: readonly Station[], along: number): { frame: Frame; past: number } {
  const next = stations.findIndex(({ at }) => at > along);
  if (next <= 0) {
    const end = next === 0 ? stations[0]! : stations.at(-1)!;
    return { frame: end.frame, past: along - end.at };
  }
  const [a, b] = [stations[next - 1]!, stations[next]!];
  const share = (along - a.at) / (b.at - a.at);
  const mix = (axis: keyof Frame): Vec3 => between(a.frame[axis], b.frame[axis], share);
  return { frame: { origin: mix('origin'), x: mix('x'), y: mix('y'), w: mix('w') }, past: 0 };
}
