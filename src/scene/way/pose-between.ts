import type { Pose } from '../../core';

type Place = Pick<Pose, 'pivot' | 'axis' | 'angle' | 'shift' | 'bow'>;

/** Where a panel stands at a place between poses: 0 = the first, 1 = the second, and so on. */
export function poseBetween(poses: readonly Pose[], at: number): Place {
  const low = Math.min(Math.max(Math.floor(at), 0), poses.length - 1);
  const [from, to] = [poses[low]!, poses[Math.min(low + 1, poses.length - 1)]!];
  const share = Math.min(Math.max(at - low, 0), 1);
  const mix = (a: number, b: number): number => a + share * (b - a);
  return {
    axis: from.axis,
    pivot: from.pivot,
    angle: mix(from.angle, to.angle),
    shift: [mix(from.shift[0], to.shift[0]), mix(from.shift[1], to.shift[1]), mix(from.shift[2], to.shift[2])],
    bow: {
      sagitta: mix(from.bow.sagitta, to.bow.sagitta),
      shortening: mix(from.bow.shortening, to.bow.shortening),
    },
  };
}
