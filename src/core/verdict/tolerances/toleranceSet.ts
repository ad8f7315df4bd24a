import type { Tolerances } from '../../job-file';

/** What a limit is about: out of plumb, out of flat, a corner out of square, a rim out of level. */
export type Property = 'plumb' | 'flat' | 'square' | 'level';

/** Largest permitted deviation, mm, over a length in mm; null where the set says nothing about it. */
export type Limit = (length: number) => number | null;

export interface ToleranceSet extends Record<Property, Limit> {
  id: Tolerances['set'];
  name: string;
  /** where the limits stand, and how they were seen */
  source: string;
  /** the limits in words */
  about: string;
}

export const silent: Limit = () => null;

/** So much over a length, in proportion. */
export const inProportion =
  (deviation: number, over: number): Limit =>
  (length) =>
    (deviation * length) / over;
