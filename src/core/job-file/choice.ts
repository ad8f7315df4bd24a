import { z } from 'zod';
import { idText } from './field';
import { finish } from './finish';
import { shelves } from './shelf';
import { trim } from './trim';

const { width, verticalWidth, thickness, lip, rise, overhang, joinery } = trim.shape;
const bare = <T extends z.ZodType>(field: z.ZodDefault<T>): z.ZodOptional<T> => field.unwrap().optional();

/** Another way to finish the same alcove: what it has unlike the job itself. */
export const choice = z.strictObject({
  id: idText,
  finish: finish.optional(),
  trim: z
    .strictObject({
      width: bare(width),
      verticalWidth,
      thickness: bare(thickness),
      lip: bare(lip),
      rise: bare(rise),
      overhang: bare(overhang),
      joinery: joinery.unwrap().optional(),
    })
    .optional(),
  shelves: shelves.optional(),
});

export type Choice = z.infer<typeof choice>;
