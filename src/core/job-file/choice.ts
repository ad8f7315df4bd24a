import { z } from 'zod';
import { distinctIds } from './distinctIds';
import { idText } from './field';
import { finish } from './finish';
import { shelf } from './shelf';
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
  shelves: z.array(shelf).max(20).check(distinctIds('shelves')).optional(),
});

export type Choice = z.infer<typeof choice>;
