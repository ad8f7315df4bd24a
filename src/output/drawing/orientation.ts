import type { EdgeName, PanelName, Point } from '../../core';
import type { Place, View } from './drawing';
import type { Rectangle } from './rectangle';

/** How a panel's flat sheet turns into a drawing. */
export interface Orientation {
  /** -1 where the sheet's first axis is drawn to the left */
  sign: 1 | -1;
  point: (point: Point) => Point;
  rectangle: (rectangle: Rectangle) => Rectangle;
  place: (edge: EdgeName) => Place;
}

/** On the left wall u grows to the viewer's left; seen from the back every panel is mirrored. */
export function orientation(panel: PanelName, view: View): Orientation {
  const sign = (panel === 'left') === (view === 'face') ? -1 : 1;
  const places: Record<EdgeName, Place> = {
    bottom: 'bottom',
    top: 'top',
    left: sign === 1 ? 'left' : 'right',
    back: sign === 1 ? 'left' : 'right',
    right: sign === 1 ? 'right' : 'left',
    front: sign === 1 ? 'right' : 'left',
  };
  return {
    sign,
    point: ([x, y]) => [x === 0 ? 0 : sign * x, y],
    rectangle: ({ left, right, bottom, top }) =>
      sign === 1 ? { left, right, bottom, top } : { left: -right, right: -left, bottom, top },
    place: (edge) => places[edge],
  };
}
