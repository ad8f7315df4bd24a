import type { PoseUnknown, ScanUnknown } from './scanInUse';

export type Triple = [number, number, number];

/** Places taken on by a matrix, nine numbers row after row, and a shift. */
export interface Affine {
  matrix: readonly number[];
  shift: Readonly<Triple>;
}

/** Writes where a place comes to. */
export function takenBy({ matrix: m, shift }: Affine, [x, y, z]: Readonly<Triple>, out: Triple): Triple {
  out[0] = m[0]! * x + m[1]! * y + m[2]! * z + shift[0];
  out[1] = m[3]! * x + m[4]! * y + m[5]! * z + shift[1];
  out[2] = m[6]! * x + m[7]! * y + m[8]! * z + shift[2];
  return out;
}

/** How a scan's frame lies against the job's: p = (1 + scale) R p′ + t, R = R_y(yaw) R_x(forward) R_z(sideways). */
export interface Pose {
  into: Affine;
  /** derivative of `into` with respect to an unknown */
  by(name: PoseUnknown): Affine;
}

export function poseOf(unknown: (name: ScanUnknown) => number): Pose {
  const scale = 1 + unknown('scale');
  const [yaw, forward, sideways] = [
    turnY(unknown('yaw')),
    turnX(unknown('tiltForward')),
    turnZ(unknown('tiltSideways')),
  ];
  const rotation = times(times(yaw.turn, forward.turn), sideways.turn);
  const scaled = (matrix: readonly number[]): number[] => matrix.map((each) => scale * each);
  const unmoved: Triple = [0, 0, 0];
  const derivatives: Record<PoseUnknown, Affine> = {
    yaw: { matrix: scaled(times(times(yaw.change, forward.turn), sideways.turn)), shift: unmoved },
    tiltForward: { matrix: scaled(times(times(yaw.turn, forward.change), sideways.turn)), shift: unmoved },
    tiltSideways: { matrix: scaled(times(times(yaw.turn, forward.turn), sideways.change)), shift: unmoved },
    scale: { matrix: rotation, shift: unmoved },
    across: { matrix: NOTHING, shift: [1, 0, 0] },
    up: { matrix: NOTHING, shift: [0, 1, 0] },
    out: { matrix: NOTHING, shift: [0, 0, 1] },
  };
  return {
    into: { matrix: scaled(rotation), shift: [unknown('across'), unknown('up'), unknown('out')] },
    by: (name) => derivatives[name],
  };
}

const NOTHING: readonly number[] = new Array<number>(9).fill(0);

interface Turn {
  turn: number[];
  /** its derivative with respect to the angle */
  change: number[];
}

function turnX(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { turn: [1, 0, 0, 0, c, -s, 0, s, c], change: [0, 0, 0, 0, -s, -c, 0, c, -s] };
}
function turnY(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { turn: [c, 0, s, 0, 1, 0, -s, 0, c], change: [-s, 0, c, 0, 0, 0, -c, 0, -s] };
}
function turnZ(angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  return { turn: [c, -s, 0, s, c, 0, 0, 0, 1], change: [-s, -c, 0, c, -s, 0, 0, 0, 0] };
}

const times = (a: readonly number[], b: readonly number[]): number[] =>
  Array.from({ length: 9 }, (_, k) => {
    const [i, j] = [Math.floor(k / 3), k % 3];
    return a[3 * i]! * b[j]! + a[3 * i + 1]! * b[3 + j]! + a[3 * i + 2]! * b[6 + j]!;
  });
