/**
 * In the file's own unit, whichever it is: no place on earth is as far, and the square of it is still a number in single
 * precision.
 */
const FARTHEST = 1e12;

/** True where three coordinates can be those of a point: they are numbers, and no slip in an exponent. */
export const isPlace = (x: number, y: number, z: number): boolean => x * x + y * y + z * z < FARTHEST * FARTHEST;
