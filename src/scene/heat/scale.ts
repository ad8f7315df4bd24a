import { encoded, type Oklab, oklabToLinear } from './oklab';

/**
 * Into the room, true, away from the room: blue, near white and orange-brown, which no kind of colour blindness
 * confuses.
 */
const intoRoom: Oklab = [0.42, -0.035, -0.125];
const neutral: Oklab = [0.965, 0.0, 0.004];
const away: Oklab = [0.5, 0.075, 0.1];
/** More than straight mixing gives in the middle of an arm, so that it does not look washed out. */
const FULLNESS = 0.35;

/** Entries of the scale: odd, so that the middle one is the neutral. */
export const SCALE_ENTRIES = 255;

export type Bytes = readonly [red: number, green: number, blue: number];

/** Colour of a deviation as a share of the range, −1 (away) to 1 (into the room), as sRGB bytes. */
export function scaleColour(share: number): Bytes {
  const t = Math.min(1, Math.abs(share));
  const end = share < 0 ? away : intoRoom;
  const fuller = t + FULLNESS * t * (1 - t);
  const mixed: Oklab = [
    neutral[0] + (end[0] - neutral[0]) * t,
    neutral[1] + (end[1] - neutral[1]) * fuller,
    neutral[2] + (end[2] - neutral[2]) * fuller,
  ];
  const [red, green, blue] = oklabToLinear(mixed).map((light) =>
    Math.round(255 * Math.min(1, Math.max(0, encoded(light)))),
  );
  return [red!, green!, blue!];
}

/** The same as a CSS colour. */
export const scaleColourText = (share: number): string => `rgb(${scaleColour(share).join(' ')})`;

/** The whole scale from away to into the room. */
export const scaleColours = (): Bytes[] =>
  Array.from({ length: SCALE_ENTRIES }, (_, i) => scaleColour((2 * i) / (SCALE_ENTRIES - 1) - 1));

/** The scale as a CSS gradient, from away to into the room. */
export const scaleGradient = (towards: string, stops = 33): string => gradient(towards, -1, 1, stops);

/** The half of the scale that leads away from the room, from true on. */
export const awayGradient = (towards: string, stops = 17): string => gradient(towards, 0, -1, stops);

function gradient(towards: string, from: number, to: number, stops: number): string {
  const colours = Array.from({ length: stops }, (_, i) => scaleColourText(from + ((to - from) * i) / (stops - 1)));
  return `linear-gradient(${towards}, ${colours.join(', ')})`;
}
