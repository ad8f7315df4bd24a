import { z } from 'zod';
import { count, millimetres } from './field';

/** A length that the trim is sold in; without `onHand` as many as needed. */
const stock = z.strictObject({
  length: millimetres(300, 8000),
  onHand: count(1000).optional(),
});

/** A plumb outer line given by hand: distance in mm from the back wall's origin plane. */
const outerLine = millimetres(100, 3000).optional();

/**
 * Trim around the panels. Every field has a default, and they make a flat strip of 38 × 6 mm along the top of all three
 * panels and down both outer edges, butted; `{"top": false, "sideTops": false, "verticals": false}` is a job without.
 */
export const trim = z.strictObject({
  /** piece along the back wall, from side wall to side wall */
  top: z.boolean().default(true),
  /** pieces along the tops of the side panels */
  sideTops: z.boolean().default(true),
  /** pieces down the outer edges of the side panels */
  verticals: z.boolean().default(true),
  /** angle strips up the inside corners */
  insideCorners: z.boolean().default(false),
  /** of the strip's face, mm */
  width: millimetres(8, 300).default(38),
  /** face width of the verticals where it differs, mm */
  verticalWidth: millimetres(8, 300).optional(),
  thickness: millimetres(1, 50).default(6),
  /** how far the outer edge returns towards the wall over the panel's edge, mm; 0 = a flat strip */
  lip: millimetres(0, 60).default(0),
  /** how far the top pieces stand above the panels' top, mm; never less than a lip needs */
  rise: millimetres(0, 200).default(12),
  /** how far the verticals stand out past the panels' edge where that stands out most, mm; never less than a lip needs */
  overhang: millimetres(0, 200).default(0),
  outerLine: z.strictObject({ left: outerLine, right: outerLine }).default({}),
  /** how pieces meet at the inside corners and where a top meets a vertical */
  joinery: z.enum(['butt', 'mitre']).default('butt'),
  /** clearance where trim meets trim, a wall or a panel's face, mm */
  joint: millimetres(0, 10).default(1),
  /** where the verticals end: beside the tub at the floor, or on the rim */
  foot: z.enum(['floor', 'rim']).default('floor'),
  /** clearance to the floor, mm */
  floorGap: millimetres(0, 50).default(3),
  /** the angle strips: width of each flange and its thickness, mm */
  angleStrip: z
    .strictObject({ width: millimetres(10, 100).default(19), thickness: millimetres(0.5, 5).default(2) })
    .prefault({}),
  /** distance between strips of tape that hold a piece while its adhesive cures, mm at most */
  tapeSpacing: millimetres(50, 2000).default(300),
  /** what is added to each piece for fitting when stock is cut, mm */
  allowance: millimetres(0, 200).default(6),
  /** lengths that the trim is sold in */
  stock: z
    .array(stock)
    .min(1, 'needs at least one length')
    .max(20)
    .default([{ length: 2440 }]),
});

export type Trim = z.infer<typeof trim>;
