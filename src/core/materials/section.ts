/** A joint this wide and wider is filled over a backer, mm (1/4 in). */
const BACKED = 6.35;

/**
 * Depth to which a joint is filled, mm. Wide joints: half the width, within 1/4 and 1/2 in, over a backer (a rule of
 * thumb in architectural detailing handbooks). A joint narrower than 1/4 in is filled to the panel's thickness.
 */
export function fillDepth(width: number, thickness: number): number {
  if (width < BACKED) return thickness;
  return Math.min(Math.max(width / 2, BACKED), 2 * BACKED);
}

/** Cross-section of a sealed joint, mm²: the fill, and a triangular fillet of the given leg over it. */
export function jointSection(width: number, thickness: number, fillet: number): number {
  const open = Math.max(0, width);
  return open * fillDepth(open, thickness) + (fillet * fillet) / 2;
}

/**
 * Volume of a joint whose width is sampled along it, mm³: trapezoidal rule.
 * @param widths `[along, width]` with `along` ascending, mm
 */
export function jointVolume(widths: readonly (readonly [number, number])[], thickness: number, fillet: number): number {
  let volume = 0;
  for (let k = 1; k < widths.length; k++) {
    const [from, before] = widths[k - 1]!;
    const [to, after] = widths[k]!;
    const mean = (jointSection(before, thickness, fillet) + jointSection(after, thickness, fillet)) / 2;
    volume += mean * (to - from);
  }
  return volume;
}

/** Length of a joint that is filled over a backer, mm; the width between samples as a straight line. */
export function backedLength(widths: readonly (readonly [number, number])[]): number {
  let length = 0;
  for (let k = 1; k < widths.length; k++) {
    const [from, before] = widths[k - 1]!;
    const [to, after] = widths[k]!;
    const [low, high] = [Math.min(before, after), Math.max(before, after)];
    if (low >= BACKED) length += to - from;
    else if (high > BACKED) length += ((high - BACKED) / (high - low)) * (to - from);
  }
  return length;
}
