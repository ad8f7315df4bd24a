import type { LeastSquaresProblem } from '../../src/core/least-squares';

/** A textbook survey network as kept in data/net_*.json; m and rad. */
export interface Network {
  name: string;
  source: string;
  dimension: number;
  points: Record<string, number[]>;
  fixed: string[];
  datum: string[];
  observations: NetworkObservation[];
  published_adjusted: Record<string, number[]>;
  recomputed: {
    dof: number;
    s0: number;
    adjusted: Record<string, number[]>;
    sigma_mm_aposteriori: Record<string, number[]>;
    redundancy: number[];
    w_baarda_apriori1: number[];
    tau_standardized: number[];
  };
  gama_std_residual_in_file_order?: number[];
}

interface NetworkObservation {
  /** height difference, distance, angle (at, back, fore) or azimuth */
  type: string;
  from?: string;
  to?: string;
  at?: string;
  back?: string;
  fore?: string;
  value: number;
  sigma: number;
}

const AXES = ['x', 'y', 'z'];
/** A datum condition holds this well, m: it has no redundancy, so any small value does. */
const CONDITION_SIGMA = 1e-6;

/** Names of the unknowns: `B` for a height, `xB` and so on for coordinates. */
export function unknownsOf({ dimension, points, fixed }: Network): { name: string; point: string; axis: number }[] {
  return Object.keys(points)
    .flatMap((point) =>
      dimension === 1
        ? [{ name: point, point, axis: 0 }]
        : AXES.slice(0, dimension).map((letter, axis) => ({ name: `${letter}${point}`, point, axis })),
    )
    .filter(({ name }) => !fixed.includes(name));
}

/** The network's observations as a least-squares problem; a free network gets its datum conditions as further rows. */
export function networkProblem(network: Network): LeastSquaresProblem {
  const { dimension, points, observations } = network;
  const unknowns = unknownsOf(network);
  const approximate = (point: string): number[] =>
    dimension === 1 ? [points[point]!.at(-1)!] : points[point]!.slice(0, dimension);
  const column = new Map(unknowns.map(({ name }, j) => [name, j]));
  const columnOf = (point: string, axis: number): number | undefined =>
    column.get(dimension === 1 ? point : `${AXES[axis]}${point}`);
  const start = Float64Array.from(unknowns, ({ point, axis }) => approximate(point)[axis]!);
  const conditions = datumConditions(network, unknowns, start);

  return {
    start,
    evaluate(x) {
      const at = (point: string): number[] =>
        approximate(point).map((value, axis) => {
          const j = columnOf(point, axis);
          return j === undefined ? value : x[j]!;
        });
      const misfit: number[] = [];
      const jacobian: Float64Array[] = [];
      for (const observation of observations) {
        const { value, partials } = predict(observation, at);
        const row = new Float64Array(x.length);
        for (const { point, axis, by } of partials) {
          const j = columnOf(point, axis);
          if (j !== undefined) row[j]! += by / observation.sigma;
        }
        const off = observation.value - value;
        const turned = observation.type === 'a' || observation.type === 'az';
        misfit.push((turned ? Math.atan2(Math.sin(off), Math.cos(off)) : off) / observation.sigma);
        jacobian.push(row);
      }
      for (const condition of conditions) {
        misfit.push(-condition.reduce((sum, each, j) => sum + each * (x[j]! - start[j]!), 0) / CONDITION_SIGMA);
        jacobian.push(condition.map((each) => each / CONDITION_SIGMA));
      }
      return { misfit: Float64Array.from(misfit), jacobian };
    },
  };
}

interface Prediction {
  value: number;
  partials: { point: string; axis: number; by: number }[];
}

function predict(observation: NetworkObservation, at: (point: string) => number[]): Prediction {
  const { type, from, to } = observation;
  switch (type) {
    case 'dh': {
      const [[a], [b]] = [at(from!), at(to!)];
      return {
        value: b! - a!,
        partials: [
          { point: to!, axis: 0, by: 1 },
          { point: from!, axis: 0, by: -1 },
        ],
      };
    }
    case 'd': {
      const [a, b] = [at(from!), at(to!)];
      const value = Math.hypot(...a.map((each, axis) => b[axis]! - each));
      const partials = a.flatMap((each, axis) => {
        const by = (b[axis]! - each) / value;
        return [
          { point: to!, axis, by },
          { point: from!, axis, by: -by },
        ];
      });
      return { value, partials };
    }
    case 'az':
      return azimuth(from!, to!, at);
    case 'a': {
      const fore = azimuth(observation.at!, observation.fore!, at);
      const back = azimuth(observation.at!, observation.back!, at);
      return {
        value: fore.value - back.value,
        partials: [...fore.partials, ...back.partials.map((each) => ({ ...each, by: -each.by }))],
      };
    }
    default:
      throw new Error(`observation type ${type}`);
  }
}

/** Clockwise from the y axis, which points north. */
function azimuth(from: string, to: string, at: (point: string) => number[]): Prediction {
  const [[ax, ay], [bx, by]] = [at(from), at(to)];
  const [dx, dy] = [bx! - ax!, by! - ay!];
  const square = dx * dx + dy * dy;
  return {
    value: Math.atan2(dx, dy),
    partials: [
      { point: to, axis: 0, by: dy / square },
      { point: to, axis: 1, by: -dx / square },
      { point: from, axis: 0, by: -dy / square },
      { point: from, axis: 1, by: dx / square },
    ],
  };
}

/**
 * Inner conditions of a free network on its datum points: no shift and, in the plane, no turn against the approximate
 * coordinates (distances and height differences fix the scale).
 */
function datumConditions(
  { datum, dimension, fixed }: Network,
  unknowns: { name: string; point: string; axis: number }[],
  start: Float64Array,
): Float64Array[] {
  if (fixed.length > 0) return [];
  const inDatum = unknowns.map(({ name }) => datum.includes(name));
  const shifts = Array.from({ length: dimension }, (_, axis) =>
    Float64Array.from(unknowns, (unknown, j) => (inDatum[j] && unknown.axis === axis ? 1 : 0)),
  );
  if (dimension === 1) return shifts;
  const mean = [0, 1].map((axis) => {
    const values = start.filter((_, j) => inDatum[j] && unknowns[j]!.axis === axis);
    return values.reduce((sum, value) => sum + value, 0) / values.length;
  });
  const coordinate = (point: string, axis: number): number =>
    start[unknowns.findIndex((unknown) => unknown.point === point && unknown.axis === axis)]! - mean[axis]!;
  const turn = Float64Array.from(unknowns, ({ point, axis }, j) =>
    inDatum[j] ? (axis === 0 ? -coordinate(point, 1) : coordinate(point, 0)) / 100 : 0,
  );
  return [...shifts, turn];
}
