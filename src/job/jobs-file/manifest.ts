import { z } from 'zod';
import { limits } from './limits';

/** The photos that the app itself keeps; a picture with scripts in it is none of these. */
export const photoTypes = { 'image/jpeg': 'jpg', 'image/png': 'png', 'image/webp': 'webp' } as const;
export type PhotoType = keyof typeof photoTypes;

const time = z.number().min(0).max(8.64e15);
const side = z.number().int().min(1).max(20_000);
const inFolder = (folder: string, ending: string) =>
  z
    .string()
    .max(200)
    .regex(new RegExp(`^${folder}/[\\w-]+(/[\\w-]+)?\\.(${ending})$`), `is not a name in ${folder}/`);

/** The table of contents of a file of jobs, `contents.json` in it. */
export const manifest = z.strictObject({
  format: z.literal('nookwright-jobs'),
  version: z.literal(1),
  jobs: z
    .array(
      z.strictObject({
        /** a job file: all that is finished */
        file: inFolder('jobs', 'json'),
        /** the draft, unread text and all, where something is not finished */
        draft: inFolder('unfinished', 'json').optional(),
        /** ms since 1970 */
        changedAt: time,
        photos: z
          .array(
            z.strictObject({
              id: z.string().min(1).max(60),
              file: inFolder('photos', Object.values(photoTypes).join('|')),
              type: z.enum(Object.keys(photoTypes) as [PhotoType, ...PhotoType[]]),
              width: side,
              height: side,
              takenAt: time,
            }),
          )
          .max(limits.photos),
      }),
    )
    .min(1)
    .max(limits.jobs),
});
export type Manifest = z.infer<typeof manifest>;

export const contentsName = 'contents.json';
