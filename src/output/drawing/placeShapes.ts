import type { Point } from '../../core';
import type { Shape } from './shape';

/** The shapes scaled about the origin, then moved by `to`; words keep their size relative to the geometry. */
export function placeShapes(shapes: Shape[], scale: number, to: Point): Shape[] {
  const move = ([x, y]: Point): Point => [x * scale + to[0], y * scale + to[1]];
  const place = (shape: Shape): Shape => {
    switch (shape.kind) {
      case 'polyline':
        return { ...shape, points: shape.points.map(move) };
      case 'circle':
        return { ...shape, centre: move(shape.centre), radius: shape.radius * scale };
      case 'words':
        return { ...shape, at: move(shape.at), size: shape.size * scale };
    }
  };
  return shapes.map(place);
}
