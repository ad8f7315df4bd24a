/** From and to along one axis, mm; null where that side is open. */
export type Range = readonly [from: number | null, to: number | null];

/** The points in a box, by their numbers, going up. */
export function pointsInBox(
  positions: Float32Array,
  [x, y, z]: readonly [Range, Range, Range],
  wanted: (point: number) => boolean,
): Uint32Array {
  const found: number[] = [];
  for (let i = 0, at = 0; at < positions.length; i++, at += 3) {
    if (within(positions[at]!, x) && within(positions[at + 1]!, y) && within(positions[at + 2]!, z) && wanted(i)) {
      found.push(i);
    }
  }
  return Uint32Array.from(found);
}

const within = (value: number, [from, to]: Range): boolean =>
  (from === null || value >= from) && (to === null || value <= to);
