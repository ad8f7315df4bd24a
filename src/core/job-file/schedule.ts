import { z } from 'zod';
import { celsius, hours, minutes } from './field';

const rate = (usual: number) => minutes(0, 1440).default(usual);
const cureHours = () => hours(0, 720).default(24);

/** A person's own rates, minutes. Defaults are common practice, no source; put in your own. */
const rates = z.strictObject({
  shutOff: rate(15),
  prepareWall: rate(30),
  /** for each metre of tape, of cut and of joint */
  tapeMetre: rate(3),
  knifeMetre: rate(4),
  planeMetre: rate(6),
  jigsawMetre: rate(8),
  jointMetre: rate(3),
  /** for each piece */
  hole: rate(12),
  dryFit: rate(15),
  adhesive: rate(15),
  setPanel: rate(15),
  leg: rate(25),
  trimPiece: rate(20),
  shelf: rate(25),
  clean: rate(25),
  plumbing: rate(60),
  handOver: rate(20),
});

/** How the work is laid out in time. */
export const schedule = z
  .strictObject({
    people: z.literal([1, 2]).default(1),
    /** first day of work, `YYYY-MM-DD`; without it the plan counts days from the start */
    start: z.iso.date().optional(),
    /** minutes after midnight, local time */
    from: minutes(0, 1439).default(8 * 60),
    to: minutes(1, 1440).default(16 * 60 + 30),
    /** days of work, 1 = Monday … 7 = Sunday */
    days: z
      .array(z.number().int().min(1).max(7))
      .min(1, 'needs at least one day of work')
      .max(7)
      .default([1, 2, 3, 4, 5]),
    rates: rates.prefault({}),
    /** at the stated temperature, before the temperature rule */
    cure: z.strictObject({ adhesive: cureHours(), sealant: cureHours() }).prefault({}),
    /** °C on site */
    temperature: celsius(-10, 45).default(21),
    /** minutes until a bead of sealant skins over and can no longer be tooled */
    skinOver: minutes(1, 240).default(10),
  })
  .refine(({ from, to }) => to - from >= 60, { path: ['to'], error: 'must be at least an hour after `from`' });
