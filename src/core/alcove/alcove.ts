import type { Side } from '../job-file';
import type { Surface } from '../surface';

/**
 * The alcove as surfaces in the frame of the control lines: right-handed, mm, origin where the level line crosses the
 * plumb line on the back wall, x right, y up, z out of the back wall into the room.
 */
export interface Alcove {
  /** z = back(x, y) */
  back: Surface;
  /** x = left(z, y) */
  left: Surface;
  /** x = right(z, y) */
  right: Surface;
  /** y = rim(x, z) */
  rim: Surface;
  /** front edge of each side wall, z = front(0, y) */
  front: Record<Side, Surface>;
}
