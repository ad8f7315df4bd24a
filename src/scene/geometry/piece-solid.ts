import { type Body, fold, type Piece } from '../../core';
import { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
import { triangulated } from './triangulate';

/** No side of a drawn triangle is longer, mm, so that a piece bends with its wall. */
const longestSide = 160;
/** Outlines are drawn this far off the face, mm, so that they show. */
const off = 0.6;

type Corner = readonly [number, number];

export interface PieceSolid {
  mesh: MeshData;
  /** outline of each body's face, closed */
  outlines: Vec3[][];
}

/** A piece in its place: every body between its two loops, folded into the alcove. */
export function pieceSolid(piece: Piece, place: (point: Vec3) => Vec3): PieceSolid {
  const folded = fold(piece);
  const at =
    (w: number) =>
    ([x, y]: Corner) =>
      place(folded(x, y, w));
  const bodies = piece.bodies.map(counterClockwise).map((body) => {
    const { back, face } = dividedTogether(body);
    const cap = (loop: Corner[], w: number, turned: boolean): MeshData => {
      const { points, indices } = triangulated(loop, [], longestSide);
      return { positions: points.flatMap((point) => [...at(w)(point)]), indices: turned ? indices.reverse() : indices };
    };
    const around = gridMesh([closed(back).map(at(body.from)), closed(face).map(at(body.to))]);
    return {
      mesh: joinMeshes([cap(face, body.to, false), cap(back, body.from, true), around]),
      outline: face.map(at(body.to + off)),
    };
  });
  return { mesh: joinMeshes(bodies.map(({ mesh }) => mesh)), outlines: bodies.map(({ outline }) => outline) };
}

const closed = (loop: Corner[]): Corner[] => [...loop, loop[0]!];

function counterClockwise(body: Body): Body {
  const twice = body.face.reduce((sum, [x, y], i) => {
    const [nextX, nextY] = body.face[(i + 1) % body.face.length]!;
    return sum + x * nextY - nextX * y;
  }, 0);
  return twice > 0 ? body : { ...body, back: [...body.back].reverse(), face: [...body.face].reverse() };
}

/**
 * Both loops with as many points added to each side of one as to that of the other; in single precision, as triangles
 * are.
 */
function dividedTogether({ back, face }: Body): { back: Corner[]; face: Corner[] } {
  const loops: { back: Corner[]; face: Corner[] } = { back: [], face: [] };
  face.forEach((corner, i) => {
    const next = (i + 1) % face.length;
    const sides = { face: [corner, face[next]!], back: [back[i]!, back[next]!] } as const;
    const longest = Math.max(...Object.values(sides).map(([a, b]) => Math.hypot(b[0] - a[0], b[1] - a[1])));
    const steps = Math.max(1, Math.ceil(longest / longestSide));
    for (const name of ['back', 'face'] as const) {
      const [a, b] = sides[name];
      for (let k = 0; k < steps; k++) {
        const t = k / steps;
        loops[name].push([Math.fround(a[0] * (1 - t) + b[0] * t), Math.fround(a[1] * (1 - t) + b[1] * t)]);
      }
    }
  });
  return loops;
}
