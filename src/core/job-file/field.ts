import { z } from 'zod';

const atMost = (most: number, unit: string) =>
  z.number().max(most, { error: ({ input }) => `must be at most ${most}${unit}; found ${input}` });

/** Finite number from `least` to `most`, both in the unit that messages name. */
export const between = (least: number, most: number, unit: string) =>
  atMost(most, unit).min(least, { error: ({ input }) => `must be at least ${least}${unit}; found ${input}` });

/** Finite number of millimetres within a plausible range. */
export const millimetres = (least: number, most: number) => between(least, most, ' mm');

/** Finite number of mm per m within a plausible range. */
export const millimetresPerMetre = (least: number, most: number) => between(least, most, ' mm/m');

/** How many of something; who counts with it rounds a part of one to the safe side. */
export const count = (most: number) => between(0, most, '');

/** Finite number of mL within a plausible range. */
export const millilitres = (least: number, most: number) => between(least, most, ' mL');

/** A share from none, 0, or the least given, to all of it, 1. */
export const share = (least = 0) => between(least, 1, '');

/** A coefficient of linear thermal expansion in 1e-6/K. */
export const perMillionKelvin = (least: number, most: number) => between(least, most, ' × 10⁻⁶/K');

/** Growth in 1e-6 for each per cent of relative humidity. */
export const perMillionHumidity = (least: number, most: number) => between(least, most, ' × 10⁻⁶ per % RH');

export const minutes = (least: number, most: number) => between(least, most, ' minutes');
export const hours = (least: number, most: number) => between(least, most, ' hours');
export const celsius = (least: number, most: number) => between(least, most, ' °C');

/** Finite number of degrees within a plausible range. */
export const degrees = (least: number, most: number) => between(least, most, '°');

/** Millimetres above zero, at most `most`. */
export const positiveMillimetres = (most: number) =>
  atMost(most, ' mm').gt(0, { error: ({ input }) => `must be more than 0 mm; found ${input}` });

/** The smallest standard deviation, in any unit: weights stay within what a double carries. */
const LEAST_SD = 1e-6;

/** A standard deviation (1 sigma) in the unit that its field states. */
export const standardDeviation = (most: number) => between(LEAST_SD, most, '');

/** Height in mm from the level line, up positive. */
export const height = millimetres(-3000, 3000);

/** One line of text; control characters would spoil the drawings that it is printed on. */
export const lineText = (most: number) =>
  z
    .string()
    .max(most)
    .regex(/^\P{Cc}*$/u, 'must be one line without control characters');

export const idText = lineText(60).regex(/\S/, 'needs at least one character that shows');
export const noteText = z.string().max(2000);

/** Whole minor units of a currency (cents), none to ten million major units. */
export const minorUnits = () => between(0, 1_000_000_000, '').int('must be a whole number of minor units (cents)');
export const percent = () => between(0, 100, ' %');
export const days = (least: number, most: number) => between(least, most, ' days').int('must be whole days');
