import { z } from 'zod';
import { millimetres, millimetresPerMetre } from './field';

/** Which limits the walls are judged by. What each set holds, and where from: core/verdict/tolerances. */
export const tolerances = z.strictObject({
  set: z.enum(['trade', 'finished', 'finished-strict', 'raw', 'residential', 'tile']).default('trade'),
  /** limits of one's own; each takes the place of the set's */
  own: z
    .strictObject({
      /** out of plumb, mm/m */
      plumb: millimetresPerMetre(0.1, 100).optional(),
      /** hollow or hump under a straightedge as long as the wall, mm */
      flat: millimetres(0.1, 100).optional(),
      /** a corner out of square, mm/m */
      square: millimetresPerMetre(0.1, 100).optional(),
      /** rim out of level, mm/m */
      level: millimetresPerMetre(0.1, 100).optional(),
    })
    .default({}),
});
