import { z } from 'zod';
import { degrees, height, idText, millimetres, noteText, positiveMillimetres, standardDeviation } from './field';
import { SIDES, WALLS, type WallName } from './sides';

/** Which instrument took a length, where a kind leaves the choice. */
const lengthInstrument = z.enum(['tape', 'laser']);
const side = z.enum(SIDES);
const wall = z.enum(WALLS);

/** ISO 8601 in UTC. */
const time = z.iso.datetime({
  error: ({ code }) => (code === 'invalid_format' ? 'must be a time such as "2026-05-04T10:30:00Z"' : undefined),
});

/** Values that stood here before, oldest first, with the time at which each was replaced. */
const historyOf = (value: z.ZodNumber) =>
  z
    .array(z.strictObject({ value, until: time }))
    .max(200)
    .optional();

/** What was read, and what the same measurement gave when it was taken again; their mean is used. */
const taken = (value: z.ZodNumber) => ({
  value,
  repeats: z.array(value).max(20).optional(),
  history: historyOf(value),
});

const gapValue = millimetres(-300, 600);

/** Fields that every reading has. `value` is in mm unless the kind says otherwise. */
const common = {
  id: idText,
  /** Standard deviation (1 sigma) in the reading's own unit; without it the instrument's applies. */
  sd: standardDeviation(100).optional(),
  note: noteText.optional(),
  /** names of photos kept beside the job */
  photos: z.array(idText).max(40).optional(),
  /** Kept in the file but left out of the adjustment. */
  off: z.boolean().optional(),
};

const length = { ...common, instrument: lengthInstrument.optional() };

/** A place on a wall: `at` is x on the back wall and z on a side wall; `height` is from the level line. */
const station = z.strictObject({ at: millimetres(-3000, 3000), height });
const cornerPoint = z.strictObject({ side, height });

/** On a side wall a station counts from the back wall out, so it cannot be negative. */
const standsBeforeBackWall = ({ wall, at }: { wall: WallName; at: number }): boolean => wall === 'back' || at >= 0;
const BEHIND_BACK_WALL = 'is measured out from the back wall on a side wall; it must be at least 0 mm';

const tapeToCorner = z.strictObject({
  ...length,
  kind: z.literal('tape-to-corner'),
  side,
  height,
  ...taken(positiveMillimetres(4000)),
});
const tapeToRim = z
  .strictObject({
    ...length,
    kind: z.literal('tape-to-rim'),
    wall,
    at: millimetres(-3000, 3000),
    ...taken(millimetres(-3000, 3000)),
  })
  .refine(standsBeforeBackWall, { path: ['at'], message: BEHIND_BACK_WALL });
const span = z.strictObject({
  ...length,
  kind: z.literal('span'),
  height,
  at: millimetres(0, 3000),
  ...taken(positiveMillimetres(6000)),
});
const plumb = z
  .strictObject({
    ...common,
    kind: z.literal('plumb'),
    wall,
    at: millimetres(-3000, 3000),
    gaps: z
      .array(
        z.strictObject({
          height,
          value: gapValue,
          sd: standardDeviation(100).optional(),
          history: historyOf(gapValue),
        }),
      )
      .min(2, 'needs at least two gaps; add another height')
      .max(50)
      .refine((gaps) => gaps.length < 2 || gaps.some((gap) => gap.height !== gaps[0]!.height), {
        message: 'are all at one height; take one at another height',
      }),
  })
  .refine(standsBeforeBackWall, { path: ['at'], message: BEHIND_BACK_WALL });
const straightedge = z
  .strictObject({
    ...common,
    kind: z.literal('straightedge'),
    wall,
    from: station,
    to: station,
    ...taken(millimetres(-150, 150)),
  })
  .refine(({ wall, from }) => standsBeforeBackWall({ wall, at: from.at }), {
    path: ['from', 'at'],
    message: BEHIND_BACK_WALL,
  })
  .refine(({ wall, to }) => standsBeforeBackWall({ wall, at: to.at }), {
    path: ['to', 'at'],
    message: BEHIND_BACK_WALL,
  })
  .refine(({ from, to }) => from.at !== to.at || from.height !== to.height, {
    path: ['to'],
    message: 'is the same place as `from`; give the other end of the straightedge',
  });
const square = z
  .strictObject({
    ...length,
    kind: z.literal('square'),
    side,
    height,
    alongBack: millimetres(10, 4000),
    alongSide: millimetres(10, 4000),
    ...taken(positiveMillimetres(6000)),
  })
  .refine(
    ({ alongBack, alongSide, value }) => value > Math.abs(alongBack - alongSide) && value < alongBack + alongSide,
    {
      path: ['value'],
      message: 'closes no triangle with the two distances from the corner; measure all three again',
    },
  );
const angle = z.strictObject({
  ...common,
  kind: z.literal('angle'),
  side,
  height,
  /** degrees */
  ...taken(degrees(60, 120)),
});
const diagonal = z
  .strictObject({
    ...length,
    kind: z.literal('diagonal'),
    from: cornerPoint,
    to: cornerPoint,
    ...taken(positiveMillimetres(8000)),
  })
  .refine(({ from, to }) => from.side !== to.side || from.height !== to.height, {
    path: ['to'],
    message: 'is the same corner point as `from`; give the other end of the tape',
  });
const depth = z.strictObject({
  ...length,
  kind: z.literal('depth'),
  wall: side,
  height,
  ...taken(positiveMillimetres(4000)),
});

/** Every kind of reading that a person takes by hand (see the observation equations in core/survey). */
export const reading = z.discriminatedUnion('kind', [
  tapeToCorner,
  tapeToRim,
  span,
  plumb,
  straightedge,
  square,
  angle,
  diagonal,
  depth,
]);

export type Reading = z.infer<typeof reading>;
export type ReadingKind = Reading['kind'];
export type ReadingOf<K extends ReadingKind> = Extract<Reading, { kind: K }>;
export type Station = z.infer<typeof station>;
/** A value that stood in a reading, and when another took its place. */
export interface EarlierValue {
  value: number;
  until: string;
}
