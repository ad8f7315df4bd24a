import { type PanelDrawing, type Shape, shapeBounds, templateShapes } from '../../output';
import { compactShapes } from './compact-shapes';

export interface Room {
  width: number;
  height: number;
}

export interface FittedTemplate {
  shapes: Shape[];
  /** font size in mm at the drawing's scale */
  size: number;
  /** on the screen, px */
  width: number;
  height: number;
}

/** Font on the screen, px. */
const fontPx = 13;
/** In less room than this, px, the words at the marks would leave none for the panel. */
const roomForWords = 640;

/**
 * The template at the scale at which it fills its room, with a font that is then readable. Bounds grow linearly with
 * the font, so two trials give the font that fits; where none fits, the drawing takes more room than it has.
 * @param room on the screen, px
 * @param closer times larger than the room
 */
export function fitTemplate(drawing: PanelDrawing, room: Room, closer: number): FittedTemplate {
  const wide = room.width * closer >= roomForWords;
  const shapesAt = (size: number) =>
    wide ? templateShapes(drawing, { size, notes: false }) : compactShapes(drawing, size);
  const extent = (shapes: Shape[], size: number): Room => {
    const { left, right, bottom, top } = shapeBounds(shapes);
    return { width: right - left + 2 * size, height: top - bottom + 2 * size };
  };
  const [small, large] = [extent(shapesAt(10), 10), extent(shapesAt(20), 20)];
  const along = (axis: keyof Room) => {
    const perSize = (large[axis] - small[axis]) / 10;
    const bare = small[axis] - 10 * perSize;
    const left = room[axis] * closer - fontPx * perSize;
    return left <= 0 ? Number.POSITIVE_INFINITY : (fontPx * bare) / left;
  };
  const largestFont = (drawing.bounds.right - drawing.bounds.left) / 10;
  const size = Math.min(Math.max(along('width'), along('height')), largestFont);
  const shapes = shapesAt(size);
  const { width, height } = extent(shapes, size);
  const scale = fontPx / size;
  return { shapes, size, width: width * scale, height: height * scale };
}
