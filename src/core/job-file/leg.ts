import { z } from 'zod';
import { millimetres } from './field';

/** Pieces below the side panels, beside the tub, where the panels stand out past the apron. Lengths in mm. */
export const legs = z.strictObject({
  make: z.boolean().default(true),
  /** joint to the panel above */
  joint: millimetres(0, 20).default(2),
  /** clearance to the floor */
  floorGap: millimetres(0, 50).default(3),
});
