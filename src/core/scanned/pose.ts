import type { PoseUnknown, ScanUnknown } from './scanInUse';

export type Triple = [number, number, number];

/** How a scan's frame lies against the job's: p = (1 + scale) R p′ + t, R = R_y(yaw) R_x(forward) R_z(sideways). */
export interface Pose {
  at(x: number, y: number, z: number): Triple;
  /** derivative of `at` with respect to an unknown */
  by(name: PoseUnknown, x: number, y: number, z: number): Triple;
}

export function poseOf(unknown: (name: ScanUnknown) => number): Pose {
  const scale = 1 + unknown('scale');
  const shift: Triple = [unknown('across'), unknown('up'), unknown('out')];
  const [yaw, forward, sideways] = [
    turnY(unknown('yaw')),
    turnX(unknown('tiltForward')),
    turnZ(unknown('tiltSideways')),
  ];
  const rotation = times(times(yaw.turn, forward.turn), sideways.turn);
  const derivatives: Partial<Record<PoseUnknown, number[]>> = {
    yaw: times(times(yaw.change, forward.turn), sideways.turn),
    tiltForward: times(times(yaw.turn, forward.change), sideways.turn),
    tiltSideways: times(times(yaw.turn, forward.turn), sideways.change),
  };
  return {
    at(x, y, z) {
      const p = applied(rotation, x, y, z);
      return [scale * p[0] + shift[0], scale * p[1] + shift[1], scale * p[2] + shift[2]];
    },
    by(name, x, y, z) {
      const turn = derivatives[name];
      if (turn !== undefined) {
        const p = applied(turn, x, y, z);
        return [scale * p[0], scale * p[1], scale * p[2]];
      }
      if (name === 'scale') return applied(rotation, x, y, z);
      return [name === 'across' ? 1 : 0, name === 'up' ? 1 : 0, name === 'out' ? 1 : 0];
    },
  };
}

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

const applied = (r: readonly number[], x: number, y: number, z: number): Triple => [
  r[0]! * x + r[1]! * y + r[2]! * z,
  r[3]! * x + r[4]! * y + r[5]! * z,
  r[6]! * x + r[7]! * y + r[8]! * z,
];
