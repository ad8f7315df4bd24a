import type { Frame, Point } from './frame';

/** The drawing's paper: how the development is laid on it, px, y down. */
export interface Paper {
  width: number;
  height: number;
  /** px per mm */
  scale: number;
  at(point: Point): Point;
}

/** Room around the walls, px; above them for their names. */
const MARGIN = { side: 14, top: 30, bottom: 12 };
/** From this width on, px, all three walls are shown at once. */
const WIDE = 640;

/**
 * Lays the unrolled walls on paper as true to proportion: all three across where there is room, else the back wall.
 * @param width of what is seen at once, px
 * @param zoom how much larger than that
 */
export function paperOf({ box, corner }: Frame, width: number, zoom: number): Paper {
  const seen = Math.max(width, 240) - 2 * MARGIN.side;
  const across = width >= WIDE ? box.right - box.left : 1.06 * (corner.right(0) - corner.left(0));
  const scale = (zoom * seen) / across;
  return {
    scale,
    width: Math.max(width, scale * (box.right - box.left) + 2 * MARGIN.side),
    height: scale * (box.top - box.bottom) + MARGIN.top + MARGIN.bottom,
    at: ([x, y]) => [MARGIN.side + scale * (x - box.left), MARGIN.top + scale * (box.top - y)],
  };
}
