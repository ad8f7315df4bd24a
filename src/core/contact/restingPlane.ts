/** A plane h = height + slopeU·u + slopeV·v, mm. */
export interface Plane {
  height: number;
  slopeU: number;
  slopeV: number;
}

/** A place on a wall and how far it stands into the room there, mm. */
export type Sample = readonly [u: number, v: number, h: number];

/** Less than this above a plane is on it, mm. */
const PROUD = 1e-9;
const MOST_STEPS = 1000;

export type Supports = [Sample, Sample, Sample];

/** The lowest plane at the centre that no sample stands above. */
export const restingPlane = (...given: Parameters<typeof restingSupports>): Plane =>
  planeThrough(restingSupports(...given));

/**
 * The three samples through which that plane goes: a linear programme in three unknowns, solved by exchange. While a
 * sample stands proud it replaces the support that keeps the centre inside.
 * @param corners four samples around the centre, in order around it
 */
function restingSupports(
  samples: readonly Sample[],
  corners: readonly [Sample, Sample, Sample, Sample],
  centre: readonly [number, number],
): Supports {
  const [a, b, c, d] = corners;
  let supports: Supports = holds([a, b, c], centre) ? [a, b, c] : [a, c, d];
  let plane = planeThrough(supports);
  for (let step = 0; step < MOST_STEPS; step++) {
    let proud: Sample | null = null;
    let most = PROUD;
    for (const sample of samples) {
      const above = sample[2] - heightOf(plane, sample[0], sample[1]);
      if (above > most) {
        most = above;
        proud = sample;
      }
    }
    if (proud === null) break;
    const next = proud;
    const exchanged = [0, 1, 2]
      .map((k) => supports.map((support, i) => (i === k ? next : support)) as Supports)
      .find((triangle) => holds(triangle, centre));
    if (exchanged === undefined) break;
    supports = exchanged;
    plane = planeThrough(supports);
  }
  return supports;
}

/** The plane on which a rigid sheet over a rectangle rests on a wall. */
export const restOn = (...given: Parameters<typeof supportsOn>): Plane => planeThrough(supportsOn(...given));

/**
 * The three places on which it rests, of those given and the corners.
 * @param height the wall, mm, growing towards the room
 * @param lean which way it leans along u and v where it could rock
 */
export function supportsOn(
  height: (u: number, v: number) => number,
  { u: [u0, u1], v: [v0, v1] }: { u: readonly [number, number]; v: readonly [number, number] },
  places: readonly (readonly [number, number])[],
  lean: readonly [1 | -1, 1 | -1] = [1, -1],
): Supports {
  const sample = (u: number, v: number): Sample => [u, v, height(u, v)];
  const corners = [sample(u0, v0), sample(u1, v0), sample(u1, v1), sample(u0, v1)] as const;
  // A hair off the middle, so that the centre never lies on the line between two samples.
  const centre = [u0 + (0.5 + lean[0] * 0.00013) * (u1 - u0), v0 + (0.5 + lean[1] * 0.00029) * (v1 - v0)] as const;
  return restingSupports(
    places.map(([u, v]) => sample(u, v)),
    corners,
    centre,
  );
}

function holds([a, b, c]: readonly Sample[], [u, v]: readonly [number, number]): boolean {
  const side = (p: Sample, q: Sample): number => (q[0] - p[0]) * (v - p[1]) - (q[1] - p[1]) * (u - p[0]);
  const sides = [side(a!, b!), side(b!, c!), side(c!, a!)];
  const area = (b![0] - a![0]) * (c![1] - a![1]) - (b![1] - a![1]) * (c![0] - a![0]);
  const slack = 1e-9 * Math.abs(area);
  return Math.abs(area) > 1e-6 && (sides.every((s) => s >= -slack) || sides.every((s) => s <= slack));
}

/** The plane through three samples. */
export function planeThrough([a, b, c]: readonly Sample[]): Plane {
  const [p, q] = [b!, c!].map(([u, v, h]) => [u - a![0], v - a![1], h - a![2]] as const);
  const area = p![0] * q![1] - p![1] * q![0];
  const slopeU = (p![2] * q![1] - q![2] * p![1]) / area;
  const slopeV = (p![0] * q![2] - q![0] * p![2]) / area;
  return { height: a![2] - slopeU * a![0] - slopeV * a![1], slopeU, slopeV };
}

export const heightOf = ({ height, slopeU, slopeV }: Plane, u: number, v: number): number =>
  height + slopeU * u + slopeV * v;
