import { z } from 'zod';
import { distinctIds } from './distinctIds';
import { idText, millimetres, millimetresPerMetre } from './field';

/** A shelf across an inside corner. Lengths in mm. */
export const shelf = z.strictObject({
  /** without it the shelf is called after its place in the list */
  id: idText.optional(),
  corner: z.enum(['left', 'right']).default('right'),
  /** height of the top in the corner, straight up from the finished rim */
  aboveRim: millimetres(20, 2400).default(500),
  /** length along the back wall and along the side wall, from the corner of the panels' faces */
  back: millimetres(60, 800).default(230),
  side: millimetres(60, 800).default(230),
  thickness: millimetres(2, 60).default(12),
  /** fall towards the room along the line that halves the corner: 1/8 to 1/4 in per ft is 10.4 to 20.8 mm/m */
  slope: millimetresPerMetre(0, 100).default(15.6),
  /** clearance to each wall's panel, for sealant */
  gap: millimetres(0, 15).default(2),
  /** front edge: one straight cut, a quarter of an ellipse, or straight with an end return square to each wall */
  front: z.enum(['straight', 'round', 'returned']).default('round'),
  /** length of the end returns of a `returned` front */
  returns: millimetres(5, 300).default(60),
});

/** Shelves; one without an id answers to its place in the list, counted from 1. */
export const shelves = z
  .array(shelf)
  .max(20)
  .check(distinctIds('shelves', (i) => `${i + 1}`));

export type Shelf = z.infer<typeof shelf>;
