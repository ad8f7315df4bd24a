import { type DisplayUnit, MM_PER_INCH } from '../length';

/** How a round hole is made. Diameters in mm. `jigsaw`: drill a pilot inside the line, then saw along it. */
export type HoleTool = { how: 'drill' | 'hole-saw'; diameter: number } | { how: 'jigsaw'; pilot: number };

/** Hole saws commonly sold, inches and mm (common practice, no source). */
const INCH_SAWS = [...steps(3 / 4, 4, 1 / 8), ...[4.125, 4.25, 4.5, 4.75, 5, 5.5, 6]].map(
  (inches) => inches * MM_PER_INCH,
);
const MM_SAWS = [
  19, 20, 22, 25, 27, 29, 30, 32, 35, 38, 40, 41, 44, 46, 48, 51, 54, 57, 60, 64, 65, 68, 70, 73, 76, 79, 80, 83, 86,
  89, 92, 95, 98, 102, 105, 108, 111, 114, 121, 127, 140, 152,
];

/**
 * A saw may be this much larger than the hole asked for, mm: less than a trim plate covers (common practice, no
 * source).
 */
export const LARGEST_OVERSIZE = 4;

/** A jigsaw blade passes through this, mm: 3/8 in (common practice, no source). */
const PILOT = { in: (3 / 8) * MM_PER_INCH, mm: 10 };

const DRILL_STEP = { in: MM_PER_INCH / 16, mm: 1 };

/** Takes up a diameter that was typed to a tenth of a millimetre, mm. */
const ROUNDING = 0.06;

/**
 * The tool for a round hole of this diameter, mm, from the sizes sold in this unit: the next drill under the smallest
 * hole saw, the next hole saw that is not smaller, and a jigsaw where no saw is large enough or near enough.
 */
export function holeTool(diameter: number, unit: DisplayUnit): HoleTool {
  const saws = unit === 'in' ? INCH_SAWS : MM_SAWS;
  const drill = Math.ceil((diameter - ROUNDING) / DRILL_STEP[unit]) * DRILL_STEP[unit];
  if (drill < saws[0]! - ROUNDING) return { how: 'drill', diameter: drill };
  const saw = saws.find((size) => size >= diameter - ROUNDING);
  return saw !== undefined && saw - diameter <= LARGEST_OVERSIZE
    ? { how: 'hole-saw', diameter: saw }
    : { how: 'jigsaw', pilot: PILOT[unit] };
}

function steps(from: number, to: number, step: number): number[] {
  return Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);
}
