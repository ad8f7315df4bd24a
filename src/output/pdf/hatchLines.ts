import { crossings, type Point } from '../../core';

/**
 * Parallel strokes that fill a polygon (even-odd).
 * @param spacing between strokes, mm
 * @param angle of the strokes, degrees counter-clockwise
 */
export function hatchLines(polygon: Point[], spacing: number, angle: number): [Point, Point][] {
  const radians = (angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(radians), Math.sin(radians)];
  const turned = polygon.map(([x, y]): Point => [x * cos + y * sin, -x * sin + y * cos]);
  const back = (x: number, y: number): Point => [x * cos - y * sin, x * sin + y * cos];
  const ys = turned.map(([, y]) => y);
  const strokes: [Point, Point][] = [];
  for (let i = Math.ceil(Math.min(...ys) / spacing); i * spacing <= Math.max(...ys); i++) {
    const y = i * spacing;
    const ends = crossings(turned, 1, y).sort((a, b) => a - b);
    for (let j = 0; j + 1 < ends.length; j += 2) strokes.push([back(ends[j]!, y), back(ends[j + 1]!, y)]);
  }
  return strokes;
}
