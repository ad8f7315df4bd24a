import { placeShapes, type Rectangle, type Shape, shapeBounds } from '../drawing';
import type { Pack } from './pack';
import { POINT } from './paper';

/** Font sizes tried for the dimensions, in points. */
const SIZES = [12, 11, 10, 9, 8, 7, 6, 5, 4];

/** Shapes in mm of what is drawn, with type of that size in mm, in rows no wider than `rowWidth` mm. */
export type LayOut = (given: { size: number; scale: number; rowWidth: number }) => Shape[];

/**
 * A template with its dimensions in the middle of a room, shared so that the size of type times the scale of what is drawn
 * is largest.
 * @param bare the drawing without its words, mm
 * @param largest scale
 */
export function fitShapes(layOut: LayOut, bare: Rectangle, room: Rectangle, pack: Pack, largest = Infinity): Shape[] {
  const [width, height] = [room.right - room.left, room.top - room.bottom];
  const most = Math.min(width / (bare.right - bare.left), height / (bare.top - bare.bottom), largest);
  const fits = SIZES.map((points) => {
    const fit = atSize(layOut, points * POINT, width, height, most, pack);
    return { ...fit, worth: fit.scale * points * (hasTurnedLabels(fit.shapes) ? 0.6 : 1) };
  });
  const { shapes } = fits.reduce((best, fit) => (fit.worth > best.worth ? fit : best));
  const box = shapeBounds(shapes, pack.measure);
  return placeShapes(shapes, 1, [
    (room.left + room.right) / 2 - (box.left + box.right) / 2,
    (room.bottom + room.top) / 2 - (box.bottom + box.top) / 2,
  ]);
}

/** Labels (bold, unlike edge names) that are read with the head on one side. */
const hasTurnedLabels = (shapes: Shape[]): boolean =>
  shapes.some((shape) => shape.kind === 'words' && shape.bold && shape.angle !== 0);

/** The largest scale at which a template with this type fits, found by bisection on the laid-out shapes. */
function atSize(
  layOut: LayOut,
  size: number,
  width: number,
  height: number,
  most: number,
  pack: Pack,
): { shapes: Shape[]; scale: number } {
  const at = (scale: number) =>
    placeShapes(layOut({ size: size / scale, scale, rowWidth: width / scale }), scale, [0, 0]);
  const fits = (shapes: Shape[]) => {
    const box = shapeBounds(shapes, pack.measure);
    return box.right - box.left <= width && box.top - box.bottom <= height;
  };
  let [low, high] = [0.02 * most, most];
  for (let i = 0; i < 8; i++) {
    const middle = (low + high) / 2;
    if (fits(at(middle))) low = middle;
    else high = middle;
  }
  return { shapes: at(low), scale: low };
}
