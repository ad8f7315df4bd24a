import { z } from 'zod';
import { count, millimetres, share } from './field';

const colour = () => z.string().regex(/^#[0-9a-f]{6}$/, 'must be a colour such as #e8e4dc');

/** How the panels and what belongs to them look. All of it is drawn from numbers; nothing follows from a picture file. */
export const finish = z.strictObject({
  look: z.enum(['plain', 'stone', 'ribbed', 'large-format']).default('plain'),
  colour: colour().default('#eceae4'),
  /** of veins, and of the joints of a large format */
  second: colour().default('#c9c4b8'),
  /** distance between ribs, size of a stone's figure, width of a large-format field, mm */
  size: millimetres(4, 1500).default(300),
  /** which of the many figures of this look */
  seed: count(9999).default(1),
  /** 0 = matt, 1 = mirror */
  gloss: share().default(0.45),
  trim: colour().default('#f4f3ef'),
});

export type Finish = z.infer<typeof finish>;
