/** A part of the picture, from the lower left corner, in the picture's own unit. */
export interface Cell {
  x: number;
  y: number;
  width: number;
  height: number;
}

/**
 * Room for several views: beside each other in a broad picture, one over another in an upright one, two by two between;
 * the first at top left, the last one as broad as the room that is left.
 */
export function cellsFor(count: number, width: number, height: number): Cell[] {
  const shape = width / height;
  const columns = count === 1 || (shape < 1 && count === 2) ? 1 : shape > 0.45 * count ? count : 2;
  const rows = Math.ceil(count / columns);
  return Array.from({ length: count }, (_, i) => ({
    x: ((i % columns) * width) / columns,
    y: height - ((Math.floor(i / columns) + 1) * height) / rows,
    width: (width / columns) * (i === count - 1 ? columns - (i % columns) : 1),
    height: height / rows,
  }));
}
