import type { Point } from '../../core';

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
    const crossings: number[] = [];
    turned.forEach((a, j) => {
      const b = turned[(j + 1) % turned.length]!;
      if (a[1] <= y !== b[1] <= y) crossings.push(a[0] + ((y - a[1]) / (b[1] - a[1])) * (b[0] - a[0]));
    });
    crossings.sort((a, b) => a - b);
    for (let j = 0; j + 1 < crossings.length; j += 2)
      strokes.push([back(crossings[j]!, y), back(crossings[j + 1]!, y)]);
  }
  return strokes;
}
