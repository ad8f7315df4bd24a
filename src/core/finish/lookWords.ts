import type { Finish } from '../job-file';

/** What the look of a finish is called. */
export const lookWords: Record<Finish['look'], string> = {
  plain: 'plain',
  stone: 'stone-like',
  ribbed: 'ribbed',
  'large-format': 'large format',
};
