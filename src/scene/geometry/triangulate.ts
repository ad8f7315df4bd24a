import { BufferGeometry, Float32BufferAttribute, ShapeUtils, Vector2 } from 'three';
import { TessellateModifier } from 'three/examples/jsm/modifiers/TessellateModifier.js';

type Point = readonly [number, number];

/** A flat area as triangles; three places in `points` per triangle. */
export interface FlatMesh {
  points: Point[];
  indices: number[];
}

/** Triangles that fill `ring` less `holes`, counter-clockwise as the rings are, no side longer than `longest`. */
export function triangulated(ring: readonly Point[], holes: readonly (readonly Point[])[], longest: number): FlatMesh {
  const vectors = (points: readonly Point[]) => points.map(([x, y]) => new Vector2(x, y));
  const all = [ring, ...holes].flat();
  const faces = ShapeUtils.triangulateShape(vectors(ring), holes.map(vectors));
  const corners = faces.flat().flatMap((i) => [...all[i]!, 0]);
  const geometry = new BufferGeometry().setAttribute('position', new Float32BufferAttribute(corners, 3));
  const fine = new TessellateModifier(longest, 24).modify(geometry).getAttribute('position');
  return merged(Array.from({ length: fine.count }, (_, i): Point => [fine.getX(i), fine.getY(i)]));
}

function merged(corners: readonly Point[]): FlatMesh {
  const points: Point[] = [];
  const place = new Map<string, number>();
  const indices = corners.map((corner) => {
    const key = corner.join();
    const known = place.get(key);
    if (known !== undefined) return known;
    place.set(key, points.length);
    return points.push(corner) - 1;
  });
  return { points, indices };
}

/** A closed line with points added so that no step is longer than `longest`; in single precision, as triangles are. */
export function divided(ring: readonly Point[], longest: number): Point[] {
  return ring.flatMap((point, i) => {
    const next = ring[(i + 1) % ring.length]!;
    const steps = Math.max(1, Math.ceil(Math.hypot(next[0] - point[0], next[1] - point[1]) / longest));
    return Array.from({ length: steps }, (_, k): Point => {
      const t = k / steps;
      return [Math.fround(point[0] * (1 - t) + next[0] * t), Math.fround(point[1] * (1 - t) + next[1] * t)];
    });
  });
}

/** A circle as a closed line, counter-clockwise. */
export const circle = (centre: Point, radius: number, corners = 28): Point[] =>
  Array.from({ length: corners }, (_, i): Point => {
    const angle = (2 * Math.PI * i) / corners;
    return [Math.fround(centre[0] + radius * Math.cos(angle)), Math.fround(centre[1] + radius * Math.sin(angle))];
  });
