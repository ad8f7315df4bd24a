import { z } from 'zod';
import { millimetres } from './field';

/** How sheets are shared among the pieces. Lengths in mm. */
export const cutting = z.strictObject({
  /** each panel from its own sheet, where `fit.keep` lays it; or the panels together from as little sheet as possible */
  sheets: z.enum(['own', 'least']).default('own'),
  /** width of a saw cut */
  kerf: millimetres(0, 10).default(3),
  /** margin around a piece when it is cut out roughly */
  margin: millimetres(0, 50).default(3),
  /** pieces that show may be turned by a quarter: false where the sheet has a grain or a pattern */
  turn: z.boolean().default(false),
  /** a rest narrower than this is waste */
  leastOffcut: millimetres(1, 1000).default(25),
});
