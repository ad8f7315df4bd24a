/** What a point of a scan belongs to, as it stands in a `Uint8Array` beside the points. */
export const LABEL = {
  unknown: 0,
  floor: 1,
  rim: 2,
  back: 3,
  left: 4,
  right: 5,
  /** the wall beside the opening, whose near end is the side wall's front edge */
  front: 6,
  /** in the alcove, but no part of it: towels, taps, people */
  clutter: 7,
} as const;

export type LabelName = keyof typeof LABEL;

/** In the order of their numbers. */
export const LABEL_NAMES: readonly LabelName[] = [
  'unknown',
  'floor',
  'rim',
  'back',
  'left',
  'right',
  'front',
  'clutter',
];
