/** Hue names by where they end, degrees. */
const HUES: readonly (readonly [number, string])[] = [
  [15, 'red'],
  [52, 'brown'],
  [70, 'yellow'],
  [165, 'green'],
  [195, 'blue-green'],
  [255, 'blue'],
  [320, 'purple'],
  [345, 'pink'],
  [360, 'red'],
];
/** Colours of less than this, as a share of full colour, are greys, or greyish. */
const GREY = 0.06;
const GREYISH = 0.16;

const GREYS: readonly (readonly [number, string])[] = [
  [0.14, 'black'],
  [0.4, 'dark grey'],
  [0.7, 'grey'],
  [0.88, 'light grey'],
  [0.97, 'off-white'],
  [1, 'white'],
];

/** What a colour such as `#4c5150` is roughly called, with the colour itself: `dark grey (#4c5150)`. */
export function colourWords(colour: string): string {
  const [red, green, blue] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255) as [
    number,
    number,
    number,
  ];
  const [most, least] = [Math.max(red, green, blue), Math.min(red, green, blue)];
  const [range, light] = [most - least, (most + least) / 2];
  if (range < GREY) return `${upTo(GREYS, light)} (${colour})`;
  const sixth =
    most === red ? (green - blue) / range : most === green ? (blue - red) / range + 2 : (red - green) / range + 4;
  const hue = upTo(HUES, (60 * sixth + 360) % 360);
  const name = hue === 'brown' && light > 0.6 ? 'beige' : hue;
  const depth = light < 0.3 ? 'dark ' : light > 0.75 ? 'light ' : '';
  return `${depth}${range < GREYISH && name !== 'beige' ? 'greyish ' : ''}${name} (${colour})`;
}

const upTo = (names: readonly (readonly [number, string])[], value: number): string =>
  names.find(([end]) => value <= end)![1];
