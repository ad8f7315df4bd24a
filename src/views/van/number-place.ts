import type { Rectangle } from '../../core';

/** A number as high as this share of a strip's width still stands apart from its lines. */
const FILL = 0.9;

/**
 * Middle and height of a piece's number on its sheet, mm: within the piece, or just past the far end of a strip too
 * narrow to hold it; there no higher than the strip needs to stay clear of its neighbours.
 */
export function numberPlace(
  { x, y, width, height }: Rectangle,
  sheet: { width: number; height: number },
  size: number,
): { x: number; y: number; size: number } {
  const middle = { x: x + width / 2, y: y + height / 2 };
  if (Math.min(width, height) >= size) return { ...middle, size };
  const least = Math.max(Math.min(width, height) * FILL, size / 2);
  if (width >= height)
    return { x: Math.min(x + width + 0.6 * size, sheet.width + 0.6 * size), y: middle.y, size: least };
  return { x: middle.x, y: Math.min(y + height + 0.6 * size, sheet.height + 0.6 * size), size: least };
}
