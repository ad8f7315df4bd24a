import type { Point } from '../../core';
import type { Rectangle } from './rectangle';
import type { Shape, Words } from './shape';
import { type MeasureText, roughTextWidth } from './textWidth';

/** Smallest upright rectangle round all shapes, words included. */
export function shapeBounds(shapes: Shape[], measure: MeasureText = roughTextWidth): Rectangle {
  const bounds = { left: Infinity, right: -Infinity, bottom: Infinity, top: -Infinity };
  const include = ([x, y]: Point) => {
    bounds.left = Math.min(bounds.left, x);
    bounds.right = Math.max(bounds.right, x);
    bounds.bottom = Math.min(bounds.bottom, y);
    bounds.top = Math.max(bounds.top, y);
  };
  for (const shape of shapes) {
    if (shape.kind === 'polyline') shape.points.forEach(include);
    else if (shape.kind === 'circle') {
      const {
        centre: [x, y],
        radius,
      } = shape;
      include([x - radius, y - radius]);
      include([x + radius, y + radius]);
    } else wordCorners(shape, measure).forEach(include);
  }
  return bounds;
}

function wordCorners(word: Words, measure: MeasureText): Point[] {
  const width = measure(word.text, word.size, word.bold);
  const start = { start: 0, middle: -width / 2, end: -width }[word.anchor];
  const angle = (word.angle * Math.PI) / 180;
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const at = (along: number, across: number): Point => [
    word.at[0] + along * cos - across * sin,
    word.at[1] + along * sin + across * cos,
  ];
  return [
    at(start, -0.25 * word.size),
    at(start + width, -0.25 * word.size),
    at(start + width, word.size),
    at(start, word.size),
  ];
}
