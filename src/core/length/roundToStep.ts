/** Steps by which a value may miss a tie or a whole step and still count as on it: what doubles lose in a division. */
const SLACK = 1e-9;

/** The nearest whole number of steps; a tie goes away from zero, so that a length and its mirror image print alike. */
export const nearestStep = (steps: number): number => Math.sign(steps) * Math.floor(Math.abs(steps) + 0.5 + SLACK) || 0;

/** The next whole number of steps at or above a value that is not negative; above zero is at least one step. */
export const stepAbove = (steps: number): number => (steps > 0 ? Math.max(1, Math.ceil(steps - SLACK)) : 0);
