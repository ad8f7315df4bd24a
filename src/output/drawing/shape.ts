import type { Point } from '../../core';

/**
 * What a line means. `cut`: finished outline; `hole`: hole to cut; `mark`: pencil mark; `datum`: control line;
 * `sheet`: the sheet as bought; `sliver`: strip to cut off; `gap`: where the sheet does not reach; `back`: outline at the
 * piece's back where a cut slants through the thickness; `lip`: a part that stands out behind or in front; `tape`: strip of
 * tape while adhesive cures; `axes`: the flat axes, from which a file is read back; `text`: words and their leaders.
 */
export const layers = [
  'sheet',
  'sliver',
  'gap',
  'axes',
  'datum',
  'tape',
  'lip',
  'back',
  'cut',
  'hole',
  'mark',
  'text',
] as const;
export type Layer = (typeof layers)[number];

export interface Polyline {
  kind: 'polyline';
  layer: Layer;
  points: Point[];
  closed: boolean;
}
export interface Circle {
  kind: 'circle';
  layer: Layer;
  centre: Point;
  radius: number;
}
/** One line of words; `at` is on the baseline, `size` the font size in mm, `angle` in degrees counter-clockwise. */
export interface Words {
  kind: 'words';
  layer: 'text' | 'axes';
  at: Point;
  text: string;
  size: number;
  anchor: 'start' | 'middle' | 'end';
  angle: number;
  bold: boolean;
}

/** A drawn thing in mm, first coordinate to the right, second one up. */
export type Shape = Polyline | Circle | Words;

export const line = (layer: Layer, from: Point, to: Point): Polyline => ({
  kind: 'polyline',
  layer,
  points: [from, to],
  closed: false,
});

export const polygon = (layer: Layer, points: Point[]): Polyline => ({ kind: 'polyline', layer, points, closed: true });

export const circle = (layer: Layer, centre: Point, radius: number): Circle => ({
  kind: 'circle',
  layer,
  centre,
  radius,
});

export const words = (
  text: string,
  at: Point,
  size: number,
  style: { anchor?: Words['anchor']; angle?: number; bold?: boolean } = {},
): Words => ({
  kind: 'words',
  layer: 'text',
  at,
  text,
  size,
  anchor: style.anchor ?? 'start',
  angle: style.angle ?? 0,
  bold: style.bold ?? false,
});
