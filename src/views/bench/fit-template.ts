import { type Shape, shapeBounds } from '../../output';
import type { Sketch } from './sketch';

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
const mostSteps = 4;

/**
 * The template at the scale at which it fills its room, with a font that is then readable. Bounds grow about linearly
 * with the font, so two trials tell the font that fits; it grows a little more while words placed otherwise still
 * reach out. Where no font fits, the drawing takes more room than it has.
 * @param room on the screen, px
 * @param closer times larger than the room
 */
export function fitTemplate(sketch: Sketch, room: Room, closer: number): FittedTemplate {
  const wide = room.width * closer >= roomForWords;
  const most = { width: room.width * closer, height: room.height * closer };
  const { left, right, bottom, top } = sketch.bounds;
  const largest = Math.max(right - left, (top - bottom) / 3) / 10;
  const at = (size: number) => templateAt(sketch, size, wide);
  const trials = [at(largest / 2), at(largest)] as const;
  let size = Math.min(largest, Math.max(fontThatFits(trials, 'width', most), fontThatFits(trials, 'height', most)));
  for (let step = 0; step < mostSteps; step++) {
    const fitted = at(size);
    const over = Math.max(fitted.width / most.width, fitted.height / most.height);
    if (over <= 1 || size >= largest) return fitted;
    size = Math.min(size * over * over, largest);
  }
  return at(size);
}

/** The font at which bounds through two trials fill the room along an axis. */
function fontThatFits([small, large]: readonly [FittedTemplate, FittedTemplate], axis: keyof Room, most: Room): number {
  const extent = (trial: FittedTemplate) => (trial[axis] * trial.size) / fontPx;
  const perSize = (extent(large) - extent(small)) / (large.size - small.size);
  const bare = extent(small) - small.size * perSize;
  const left = most[axis] - fontPx * perSize;
  return left <= 0 ? Number.POSITIVE_INFINITY : (fontPx * bare) / left;
}

function templateAt(sketch: Sketch, size: number, wide: boolean): FittedTemplate {
  const shapes = sketch.shapes(size, wide);
  const { left, right, bottom, top } = shapeBounds(shapes);
  const scale = fontPx / size;
  return { shapes, size, width: (right - left + 2 * size) * scale, height: (top - bottom + 2 * size) * scale };
}
