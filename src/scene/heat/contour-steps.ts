import { type DisplayUnit, MM_PER_INCH } from '../../core';

/** Contour intervals to choose from, mm. */
export const contourSteps: Record<DisplayUnit, readonly number[]> = {
  in: [1 / 32, 1 / 16, 1 / 8, 1 / 4, 1 / 2, 1].map((inches) => inches * MM_PER_INCH),
  mm: [0.5, 1, 2, 5, 10, 20],
};

/** Most contours on either side of true that a drawing carries without crowding. */
const MOST = 6;

/** The finest interval with no more than a few contours on either side. */
export function fittingStep(largest: number, unit: DisplayUnit): number {
  const steps = contourSteps[unit];
  return steps.find((step) => largest <= MOST * step) ?? steps.at(-1)!;
}

/** Ends of the scale, mm: a whole number of steps that takes in the largest deviation, two at least. */
export const scaleRange = (largest: number, step: number): number =>
  step * Math.max(2, Math.ceil(largest / step - 1e-9));
