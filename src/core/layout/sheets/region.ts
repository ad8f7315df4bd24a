import type { Rectangle } from './sheetLayout';

/**
 * Rectangles are kept one saw cut wider and higher than what can be used of them, and so are the blanks that go in: then
 * cuts between them come for free.
 */
export type Region = Rectangle;

/** What remains of a region when a rectangle is cut from its lower left corner: the split that leaves the larger rest. */
export function cutAway(region: Region, width: number, height: number): Region[] {
  const right = region.width - width;
  const above = region.height - height;
  const upright = [
    { x: region.x + width, y: region.y, width: right, height: region.height },
    { x: region.x, y: region.y + height, width, height: above },
  ];
  const level = [
    { x: region.x, y: region.y + height, width: region.width, height: above },
    { x: region.x + width, y: region.y, width: right, height },
  ];
  const rest = largest(upright) >= largest(level) ? upright : level;
  return rest.filter((each) => each.width > 0 && each.height > 0);
}

export const areaOf = ({ width, height }: Pick<Region, 'width' | 'height'>): number => width * height;
const largest = (regions: readonly Region[]): number => Math.max(...regions.map(areaOf));
