import type { LabelName } from '../../core';

/** Colours of the parts of a scan, sRGB; each part also carries its name in the drawing and can be shown alone. */
export const partColours: Record<LabelName, string> = {
  unknown: '#6f787a',
  floor: '#7a5230',
  rim: '#0f8f86',
  back: '#1d4f91',
  left: '#b25d00',
  right: '#7b3fa0',
  front: '#3d7a1c',
  clutter: '#c22f5a',
};
