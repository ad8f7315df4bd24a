import { z } from 'zod';

const within = (least: number, most: number, unit: string) =>
  z
    .number()
    .min(least, { error: ({ input }) => `must be at least ${least} ${unit}; found ${input}` })
    .max(most, { error: ({ input }) => `must be at most ${most} ${unit}; found ${input}` });
const minutes = (usual: number) => within(0, 1440, 'minutes').default(usual);
const hours = (usual: number) => within(0, 720, 'hours').default(usual);

/** A person's own rates, minutes. Defaults are common practice, no source; put in your own. */
const rates = z.strictObject({
  shutOff: minutes(15),
  prepareWall: minutes(30),
  /** for each metre of tape, of cut and of joint */
  tapeMetre: minutes(3),
  knifeMetre: minutes(4),
  planeMetre: minutes(6),
  jigsawMetre: minutes(8),
  jointMetre: minutes(3),
  /** for each piece */
  hole: minutes(12),
  dryFit: minutes(15),
  adhesive: minutes(15),
  setPanel: minutes(15),
  leg: minutes(25),
  trimPiece: minutes(20),
  shelf: minutes(25),
  clean: minutes(25),
  plumbing: minutes(60),
  handOver: minutes(20),
});

/** How the work is laid out in time. */
export const schedule = z
  .strictObject({
    people: z.union([z.literal(1), z.literal(2)]).default(1),
    /** first day of work, `YYYY-MM-DD`; without it the plan counts days from the start */
    start: z.iso.date().optional(),
    /** minutes after midnight, local time */
    from: within(0, 1439, 'minutes').default(8 * 60),
    to: within(1, 1440, 'minutes').default(16 * 60 + 30),
    /** days of work, 1 = Monday … 7 = Sunday */
    days: z
      .array(z.number().int().min(1).max(7))
      .min(1, 'needs at least one day of work')
      .max(7)
      .default([1, 2, 3, 4, 5]),
    rates: rates.prefault({}),
    /** at the stated temperature, before the temperature rule */
    cure: z.strictObject({ adhesive: hours(24), sealant: hours(24) }).prefault({}),
    /** °C on site */
    temperature: within(-10, 45, '°C').default(21),
    /** minutes until a bead of sealant skins over and can no longer be tooled */
    skinOver: within(1, 240, 'minutes').default(10),
  })
  .refine(({ from, to }) => to - from >= 60, { path: ['to'], error: 'must be at least an hour after `from`' });
