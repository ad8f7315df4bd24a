import { z } from 'zod';

/** Finite number of millimetres within a plausible range. */
export const millimetres = (least: number, most: number) =>
  z.number().min(least, `must be at least ${least} mm`).max(most, `must be at most ${most} mm`);

/** Finite number above zero, at most `most`. */
export const positive = (most: number) => z.number().gt(0, 'must be more than 0').max(most, `must be at most ${most}`);

/** Height in mm from the level line, up positive. */
export const height = millimetres(-3000, 3000);

export const idText = z.string().min(1, 'needs a name of at least one character').max(60);
export const noteText = z.string().max(2000);
