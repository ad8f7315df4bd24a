import { z } from 'zod';
import { height, idText, lineText, millimetres, noteText, standardDeviation } from './field';

/** More cells than a wall of 4 m by 3 m has at 20 mm. */
const MOST_CELLS = 30_000;

/**
 * A surface as a scan saw it, averaged over square cells of an even grid in the scan's own frame; `value` at a cell's
 * middle: z on the back wall, x on a side wall, y on the rim.
 */
const cells = z
  .strictObject({
    /** middle of the first cell: station along the wall and height; on the rim x and z */
    from: z.tuple([millimetres(-6000, 6000), millimetres(-6000, 6000)]),
    /** side of a cell, mm */
    size: millimetres(10, 300),
    columns: z.number().int().min(1).max(2000),
    /** row after row, mm; null where the scan saw nothing */
    value: z.array(millimetres(-10_000, 10_000).nullable()).max(MOST_CELLS),
    /** standard deviation (1 sigma) of each value, mm */
    sd: z.array(standardDeviation(100).nullable()).max(MOST_CELLS),
    /** points that its cells stand for, and the spread of one of them, 1 sigma, mm */
    points: z.number().int().min(0).max(1_000_000_000).optional(),
    noise: standardDeviation(100).optional(),
  })
  .refine(({ columns, value }) => value.length % columns === 0, {
    path: ['value'],
    message: 'does not fill whole rows of cells',
  })
  .refine(
    ({ value, sd }) => value.length === sd.length && value.every((each, i) => (each === null) === (sd[i] === null)),
    {
      path: ['sd'],
      message: 'must have one number for each value, and null where the value is null',
    },
  );

/** A front edge as a scan saw it: z at each height. */
const edge = z.array(z.strictObject({ height, value: millimetres(0, 6000), sd: standardDeviation(100) })).max(500);

/**
 * A point cloud condensed to what the adjustment takes from it. The scan's own frame lies near the job's; how it is
 * turned, moved and scaled against it, and how much each surface is off as a whole, is worked out with the readings.
 */
export const scan = z.strictObject({
  id: idText,
  kind: z.literal('scan'),
  /** the file that it came from */
  source: lineText(200).optional(),
  note: noteText.optional(),
  /** Kept in the file but left out of the adjustment. */
  off: z.boolean().optional(),
  /** points that the cells stand for */
  points: z.number().int().min(0).max(1_000_000_000).default(0),
  /** 1 sigma of the scanner's scale, mm per m */
  scaleSd: standardDeviation(200).default(2),
  /** 1 sigma of which way the scan has up, mm per m */
  tiltSd: standardDeviation(200).default(5),
  /** 1 sigma of how far a whole surface may be off, mm */
  biasSd: standardDeviation(50).default(0.5),
  surfaces: z
    .strictObject({ back: cells.optional(), left: cells.optional(), right: cells.optional(), rim: cells.optional() })
    .default({}),
  front: z.strictObject({ left: edge.default([]), right: edge.default([]) }).prefault({}),
});

/** A reading of kind `scan`. */
export type Scan = z.infer<typeof scan>;
export type ScanSurface = keyof Scan['surfaces'];
export type ScanGrid = z.infer<typeof cells>;
export type ScannedEdge = z.infer<typeof edge>;
