import type { Point3 } from '../points';
import { frontAt, rimAt, type TrueAlcove, wallAt } from '../trueAlcove';

/** `alcove`: walls, rim and the walls beside the opening; `room`: floor, ceiling, tub; `clutter`: what stands about. */
export type ScenePart = 'alcove' | 'room' | 'clutter';

/** What a ray met. */
export interface Hit {
  range: number;
  /** |cos| of the angle between ray and surface normal */
  incidence: number;
  part: ScenePart;
}

/** A solid that stands in the alcove: nothing of it belongs to the walls. */
export type Solid =
  | { kind: 'box'; from: Point3; to: Point3 }
  | { kind: 'ball'; centre: Point3; radius: number }
  /** upright */
  | { kind: 'cylinder'; x: number; z: number; radius: number; from: number; to: number };

export interface Scene {
  alcove: TrueAlcove;
  solids: Solid[];
  /** heights, mm from the level line */
  floor: number;
  ceiling: number;
  /** the tub: rim width at walls and apron, outer face of the apron, depth of the basin */
  tub: { ledge: number; apron: number; depth: number };
}

const EPSILON = 1e-9;

/** First surface along a unit direction from a point in the room, or null where the ray leaves the scene. */
export function firstHit(scene: Scene, from: Point3, direction: Point3): Hit | null {
  let best: Hit | null = null;
  const take = (hit: Hit | null): void => {
    if (hit !== null && (best === null || hit.range < best.range)) best = hit;
  };
  for (const solid of scene.solids) take(solidHit(solid, from, direction));
  const { alcove, tub } = scene;
  take(
    fieldHit(
      from,
      direction,
      2,
      (x, y) => wallAt(alcove, 'back', x, y),
      ([x, y]) => inside(x, -1500, 1500) && y > -3000,
    ),
  );
  for (const side of ['left', 'right'] as const) {
    take(
      fieldHit(
        from,
        direction,
        0,
        (y, z) => wallAt(alcove, side, z, y),
        ([, y, z]) => z < frontAt(alcove, side, y) && z > -200,
      ),
    );
    const outward = side === 'left' ? -1 : 1;
    take(
      fieldHit(
        from,
        direction,
        2,
        (_, y) => frontAt(alcove, side, y),
        ([x, y, z]) => {
          const wall = wallAt(alcove, side, z, y);
          return outward * (x - wall) > 0 && outward * (x - wall) < 700;
        },
      ),
    );
  }
  take(
    fieldHit(
      from,
      direction,
      1,
      () => scene.floor,
      ([, , z]) => z > tub.apron,
      'room',
    ),
  );
  take(
    fieldHit(
      from,
      direction,
      1,
      () => scene.ceiling,
      () => true,
      'room',
    ),
  );
  const [left, right] = [wallAt(alcove, 'left', 0, 0), wallAt(alcove, 'right', 0, 0)];
  const overBasin = ([x, , z]: Point3): boolean =>
    inside(x, left + tub.ledge, right - tub.ledge) && inside(z, tub.ledge, tub.apron - tub.ledge);
  take(
    fieldHit(
      from,
      direction,
      1,
      (z, x) => rimAt(alcove, x, z),
      (p) => p[2] < tub.apron && !overBasin(p),
    ),
  );
  const bottom = alcove.rim.c - tub.depth;
  take(fieldHit(from, direction, 1, () => bottom, overBasin, 'room'));
  for (const z of [tub.ledge, tub.apron - tub.ledge, tub.apron]) {
    take(
      fieldHit(
        from,
        direction,
        2,
        () => z,
        ([x, y]) => inside(x, left, right) && y < rimAt(alcove, x, z) && y > (z === tub.apron ? scene.floor : bottom),
        'room',
      ),
    );
  }
  for (const x of [left + tub.ledge, right - tub.ledge]) {
    take(
      fieldHit(
        from,
        direction,
        0,
        () => x,
        ([, y, z]) => inside(z, tub.ledge, tub.apron - tub.ledge) && y < rimAt(alcove, x, z) && y > bottom,
        'room',
      ),
    );
  }
  return best;
}

const inside = (value: number, low: number, high: number): boolean => value >= low && value <= high;

/**
 * Where a ray meets a surface given as one coordinate over the other two (in cyclic order), by fixed-point steps: walls
 * are so nearly flat that four do.
 */
function fieldHit(
  from: Point3,
  direction: Point3,
  axis: 0 | 1 | 2,
  field: (a: number, b: number) => number,
  within: (p: Point3) => boolean,
  part: ScenePart = 'alcove',
): Hit | null {
  const speed = direction[axis];
  if (Math.abs(speed) < EPSILON) return null;
  const [i, j] = [(axis + 1) % 3, (axis + 2) % 3] as [number, number];
  const at = (range: number): Point3 => [
    from[0] + range * direction[0],
    from[1] + range * direction[1],
    from[2] + range * direction[2],
  ];
  let range = (field(from[i]!, from[j]!) - from[axis]) / speed;
  if (range < 0 && range > -200) range = 0;
  if (range < 0 || range > 12_000) return null;
  for (let step = 0; step < 5; step++) {
    const p = at(range);
    range += (field(p[i]!, p[j]!) - p[axis]) / speed;
  }
  const p = at(range);
  if (!(range > 1) || !within(p)) return null;
  const slope = (k: number): number => {
    const [da, db] = [k === i ? 1 : 0, k === j ? 1 : 0];
    return field(p[i]! + da, p[j]! + db) - field(p[i]!, p[j]!);
  };
  const normal: Point3 = [0, 0, 0];
  normal[axis] = 1;
  normal[i] = -slope(i);
  normal[j] = -slope(j);
  const dot = normal[0] * direction[0] + normal[1] * direction[1] + normal[2] * direction[2];
  return { range, incidence: Math.abs(dot) / Math.hypot(...normal), part };
}

function solidHit(solid: Solid, from: Point3, d: Point3): Hit | null {
  const range = solid.kind === 'box' ? boxRange(solid, from, d) : roundRange(solid, from, d);
  return range === null || range < 1 ? null : { range, incidence: 0.7, part: 'clutter' };
}

function boxRange({ from: low, to: high }: Extract<Solid, { kind: 'box' }>, p: Point3, d: Point3): number | null {
  let [near, far] = [-Infinity, Infinity];
  for (let k = 0; k < 3; k++) {
    const speed = Math.abs(d[k]!) < EPSILON ? EPSILON : d[k]!;
    const [a, b] = [(low[k]! - p[k]!) / speed, (high[k]! - p[k]!) / speed];
    near = Math.max(near, Math.min(a, b));
    far = Math.min(far, Math.max(a, b));
  }
  return near < far ? near : null;
}

function roundRange(solid: Exclude<Solid, { kind: 'box' }>, p: Point3, d: Point3): number | null {
  const ball = solid.kind === 'ball';
  const [cx, cz] = ball ? [solid.centre[0], solid.centre[2]] : [solid.x, solid.z];
  const [x, z] = [p[0] - cx, p[2] - cz];
  const y = ball ? p[1] - solid.centre[1] : 0;
  const dy = ball ? d[1] : 0;
  const a = d[0] * d[0] + dy * dy + d[2] * d[2];
  const b = x * d[0] + y * dy + z * d[2];
  const c = x * x + y * y + z * z - solid.radius ** 2;
  const root = b * b - a * c;
  if (root < 0 || a < EPSILON) return null;
  const range = (-b - Math.sqrt(root)) / a;
  if (ball) return range;
  const height = p[1] + range * d[1];
  return height >= solid.from && height <= solid.to ? range : null;
}
