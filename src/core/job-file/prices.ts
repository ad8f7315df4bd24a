import { z } from 'zod';
import { lineText, millimetres, minorUnits, percent, share } from './field';

const money = () => minorUnits().optional();

/** A tax by what it is charged on, in percent. */
const tax = z.strictObject({
  name: lineText(60).default('Tax'),
  materials: percent().default(0),
  labour: percent().default(0),
});

/**
 * A person's own price list, without tax. Amounts are whole minor units of the currency (cents); what has no price is
 * left out of the total and named there.
 */
export const prices = z.strictObject({
  /** ISO 4217 code */
  currency: z
    .string()
    .regex(/^[A-Z]{3}$/, 'must be a currency code of three capital letters, such as USD')
    .default('USD'),
  /** one plain sheet of the size stated for that panel */
  sheets: z.strictObject({ back: money(), left: money(), right: money() }).prefault({}),
  /** what one sheet costs more in that look */
  looks: z.strictObject({ stone: money(), ribbed: money(), 'large-format': money() }).prefault({}),
  /** trim up to a width, a metre; the narrowest that holds the strip is taken */
  trim: z
    .array(z.strictObject({ upTo: millimetres(8, 300), metre: minorUnits() }))
    .max(20)
    .default([]),
  /** angle strip, a metre */
  angleStrip: money(),
  /** one shelf, cut */
  shelf: money(),
  /** one pack each, of the size stated in the supplies; brackets by the piece */
  packs: z
    .strictObject({
      adhesive: money(),
      sealant: money(),
      caulk: money(),
      flashingTape: money(),
      strips: money(),
      painterTape: money(),
      alcohol: money(),
      backerRod: money(),
      brackets: money(),
      screws: money(),
    })
    .prefault({}),
  /** an hour of one person */
  labour: z
    .strictObject({
      hour: money(),
      /** where a part of the work is charged at another rate */
      prepare: money(),
      cut: money(),
      fit: money(),
      trim: money(),
      seal: money(),
      plumbing: money(),
    })
    .prefault({}),
  /** share of sheets and strips added for what is spoilt in cutting */
  waste: share().default(0),
  /** getting rid of packing, offcuts and the old surround */
  disposal: money(),
  /** anything else, such as delivery */
  others: z
    .array(
      z.strictObject({ label: lineText(100), amount: minorUnits(), taxedAs: z.enum(['materials', 'labour', 'none']) }),
    )
    .max(30)
    .default([]),
  tax: tax.prefault({}),
});

export type Prices = z.infer<typeof prices>;
