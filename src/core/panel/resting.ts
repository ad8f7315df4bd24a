import type { Region } from '../flatten';
import type { WallName } from '../job-file';
import type { Surface } from '../surface';

/** A wall's height field turned so that growing means towards the room. */
export const intoRoom = (surface: Surface, wall: WallName) => {
  const sign = wall === 'right' ? -1 : 1;
  return (u: number, v: number): number => sign * surface.value(u, v);
};

/** A plane h = height + slopeU·u + slopeV·v, mm. */
interface Plane {
  height: number;
  slopeU: number;
  slopeV: number;
}
type Sample = [u: number, v: number, h: number];

const STEPS = 12;

/**
 * Largest distance, mm, between a wall and a rigid sheet pressed against it: the sheet rests on three of the wall's
 * high points, the facet of its upper hull that lies over the sheet's centre.
 */
export function hollowBehindRigidSheet(
  height: (u: number, v: number) => number,
  { u: [u0, u1], v: [v0, v1] }: Region,
): number {
  const samples: Sample[] = [];
  for (let i = 0; i <= STEPS; i++) {
    for (let j = 0; j <= STEPS; j++) {
      const u = u0 + ((u1 - u0) * i) / STEPS;
      const v = v0 + ((v1 - v0) * j) / STEPS;
      samples.push([u, v, height(u, v)]);
    }
  }
  // A hair off the middle, so that the centre never lies on the line between two samples.
  const plane = restingPlane(samples, [u0 + 0.50013 * (u1 - u0), v0 + 0.49971 * (v1 - v0)]);
  return samples.reduce((most, [u, v, h]) => Math.max(most, over(plane, u, v) - h), 0);
}

/**
 * The lowest plane at the centre that no sample stands above: a linear programme in three unknowns, solved by exchange.
 * Three supports hold the sheet; while a sample stands proud it replaces the support that keeps the centre inside.
 */
function restingPlane(samples: Sample[], centre: [number, number]): Plane {
  let supports = firstSupports(samples, centre);
  let plane = planeThrough(supports);
  for (let step = 0; step < samples.length; step++) {
    let proud = samples[0]!;
    let most = 1e-9;
    for (const sample of samples) {
      const above = sample[2] - over(plane, sample[0], sample[1]);
      if (above > most) {
        most = above;
        proud = sample;
      }
    }
    if (most === 1e-9) break;
    const exchanged = [0, 1, 2]
      .map((k) => supports.map((support, i) => (i === k ? proud : support)))
      .find((triangle) => holds(triangle, centre));
    if (exchanged === undefined) break;
    supports = exchanged;
    plane = planeThrough(supports);
  }
  return plane;
}

/** Three corner samples around the centre. */
function firstSupports(samples: Sample[], centre: [number, number]): Sample[] {
  const corner = (k: number): Sample => samples[k]!;
  const last = samples.length - 1;
  const triangles = [
    [0, STEPS, last],
    [0, last - STEPS, last],
  ].map((triple) => triple.map(corner));
  return triangles.find((triangle) => holds(triangle, centre))!;
}

function holds([a, b, c]: Sample[], [u, v]: [number, number]): boolean {
  const side = (p: Sample, q: Sample): number => (q[0] - p[0]) * (v - p[1]) - (q[1] - p[1]) * (u - p[0]);
  const sides = [side(a!, b!), side(b!, c!), side(c!, a!)];
  const area = (b![0] - a![0]) * (c![1] - a![1]) - (b![1] - a![1]) * (c![0] - a![0]);
  const slack = 1e-9 * Math.abs(area);
  return Math.abs(area) > 1e-6 && (sides.every((s) => s >= -slack) || sides.every((s) => s <= slack));
}

function planeThrough([a, b, c]: Sample[]): Plane {
  const [p, q] = [b!, c!].map(([u, v, h]) => [u - a![0], v - a![1], h - a![2]] as const);
  const area = p![0] * q![1] - p![1] * q![0];
  const slopeU = (p![2] * q![1] - q![2] * p![1]) / area;
  const slopeV = (p![0] * q![2] - q![0] * p![2]) / area;
  return { height: a![2] - slopeU * a![0] - slopeV * a![1], slopeU, slopeV };
}

const over = ({ height, slopeU, slopeV }: Plane, u: number, v: number): number => height + slopeU * u + slopeV * v;
