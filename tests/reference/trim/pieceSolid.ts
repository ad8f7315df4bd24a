import type { Manifold } from 'manifold-3d';
import { type Body, fold, type Piece } from '../../../src/core/piece';
import { hull, plate } from '../solids';

/** Facets along a bent strip are at most this long, mm. */
const FACET = 40;

/** A piece in its place: its bodies drawn out and folded into the alcove. */
export function pieceSolid(piece: Piece): Manifold {
  const place = fold(piece);
  return piece.bodies
    .map((body) =>
      bodySolid(body)
        .refineToLength(FACET)
        .warp((point) => {
          const [x, y, w] = point as [number, number, number];
          [point[0], point[1], point[2]] = place(x, y, w);
        }),
    )
    .reduce((whole, body) => whole.add(body));
}

/** Flat: drawn out where back and face agree, else all between the two, which for a mitred strip is convex. */
function bodySolid({ back, face, from, to }: Body): Manifold {
  if (back.every(([x, y], i) => x === face[i]![0] && y === face[i]![1]))
    return plate(face, to - from).translate([0, 0, from]);
  return hull([...back.map(([x, y]) => [x, y, from] as const), ...face.map(([x, y]) => [x, y, to] as const)]);
}
