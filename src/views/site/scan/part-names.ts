import type { LabelName } from '../../../core';

/** What the parts of a scan are called. */
export const partNames: Record<LabelName, string> = {
  back: 'back wall',
  left: 'left wall',
  right: 'right wall',
  rim: 'rim',
  front: 'wall beside the opening',
  floor: 'floor',
  clutter: 'other things',
  unknown: 'not sorted',
};

/** In the order in which they are listed: what panels are cut to first. */
export const listedParts = Object.keys(partNames) as LabelName[];
