import { type Dual, subtract } from '../dual';
import { DEGREES_PER_RADIAN } from '../length';
import type { Angle, PieceEnd } from '../piece';

/** Two points of a cut: how far apart along the strip and how far across it (or through it), mm, and where they lie. */
export interface CutRun {
  run: number;
  over: number;
  ends: readonly [Dual, Dual];
}

export const SQUARE: Angle = { degrees: 0, sd: 0 };

/**
 * The angles to set on a saw, each from a square cut: the mitre in the face, and the bevel square to the cut's line in the
 * face. `bevel` is measured along the strip, so the blade tilts by tan β = tan(bevel) · cos(mitre).
 */
export function cutAngles(given: {
  mitre: CutRun;
  bevel: CutRun | null;
  sd: (quantity: Dual) => number;
}): Pick<PieceEnd, 'mitre' | 'bevel'> {
  const mitre = angleOf(given.mitre, 1, given.sd);
  const foreshortened = Math.cos(mitre.degrees / DEGREES_PER_RADIAN);
  return { mitre, bevel: given.bevel === null ? SQUARE : angleOf(given.bevel, foreshortened, given.sd) };
}

function angleOf({ run, over, ends }: CutRun, foreshortened: number, sd: (quantity: Dual) => number): Angle {
  const tangent = (foreshortened * run) / over;
  return {
    degrees: Math.atan(tangent) * DEGREES_PER_RADIAN,
    sd: ((foreshortened * sd(subtract(...ends))) / over / (1 + tangent ** 2)) * DEGREES_PER_RADIAN,
  };
}

/**
 * What half a joint between mitred ends, measured square to the cut, takes off each piece level from its neighbour's
 * face.
 */
export const halfJoint = (joint: number, cornerAngle: number): number => joint / 2 / Math.sin(cornerAngle / 2);
