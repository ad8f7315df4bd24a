import { Z_95 } from '../reliability';

/** `cannot-tell`: the limit lies within the figure's ±. `no-limit`: the tolerances say nothing about it. */
export type Judgement = 'within' | 'beyond' | 'cannot-tell' | 'not-measured' | 'no-limit';

export interface Measured {
  /** signed, mm */
  value: number;
  sd: number;
  /** rests on a prior alone */
  assumed: boolean;
}

/**
 * Judges a deviation against the largest one permitted, either way of zero. Guarded acceptance and guarded rejection
 * (JCGM 106:2012, section 8.3) with the 95 % half-width U as the guard band on both sides of the limit: within where
 * |value| + U ≤ limit, beyond where |value| − U > limit, else it cannot be told.
 * @param limit mm
 */
export function judge({ value, sd, assumed }: Measured, limit: number | null): Judgement {
  if (assumed) return 'not-measured';
  if (limit === null) return 'no-limit';
  const half = Z_95 * sd;
  if (Math.abs(value) + half <= limit) return 'within';
  return Math.abs(value) - half > limit ? 'beyond' : 'cannot-tell';
}
