import { z } from 'zod';
import { degrees, millimetres, positiveMillimetres } from './field';

/** What sheets and panels must pass on their way to the wall. What is left out is not judged. Lengths in mm. */
export const carrying = z.strictObject({
  /** underside of the ceiling or soffit over the alcove, above the level line */
  ceiling: millimetres(-1000, 6000).optional(),
  /** underside of a header across the alcove's opening, above the level line */
  header: millimetres(-1000, 6000).optional(),
  /** clear opening of the narrowest door on the way */
  door: z
    .strictObject({ width: positiveMillimetres(5000).optional(), height: positiveMillimetres(5000).optional() })
    .prefault({}),
  /** a turn from one corridor into another */
  corridor: z
    .strictObject({
      before: positiveMillimetres(10_000).optional(),
      after: positiveMillimetres(10_000).optional(),
      height: positiveMillimetres(6000).optional(),
      /** 90 = at right angles */
      turn: degrees(10, 170).default(90),
    })
    .prefault({}),
  /** a flight of stairs and the landing that it turns on */
  stair: z
    .strictObject({
      width: positiveMillimetres(5000).optional(),
      /** plumb from the line of the nosings to what hangs over it */
      headroom: positiveMillimetres(6000).optional(),
      pitch: degrees(10, 75).default(38),
      landing: positiveMillimetres(5000).optional(),
      /** how it turns on its landing */
      turn: z.enum(['none', 'quarter', 'half']).default('quarter'),
    })
    .prefault({}),
});
