import { z } from 'zod';
import { height, idText, millimetres, noteText, positive } from './field';

/** Which instrument took a length, where a kind leaves the choice. */
const lengthInstrument = z.enum(['tape', 'laser']);
const side = z.enum(['left', 'right']);
const wall = z.enum(['back', 'left', 'right']);

/** Fields that every reading has. `value` is in mm unless the kind says otherwise. */
const common = {
  id: idText,
  /** Standard deviation (1 sigma) in the reading's own unit; without it the instrument's applies. */
  sd: positive(100).optional(),
  note: noteText.optional(),
  /** Kept in the file but left out of the adjustment. */
  off: z.boolean().optional(),
};

const length = { ...common, instrument: lengthInstrument.optional() };

/** A place on a wall: `at` is x on the back wall and z on a side wall; `height` is from the level line. */
const station = z.strictObject({ at: millimetres(-3000, 3000), height });
const cornerPoint = z.strictObject({ side, height });

export const tapeToCorner = z.strictObject({
  ...length,
  kind: z.literal('tape-to-corner'),
  side,
  height,
  value: positive(4000),
});
export const tapeToRim = z.strictObject({
  ...length,
  kind: z.literal('tape-to-rim'),
  wall,
  at: millimetres(-3000, 3000),
  value: millimetres(-3000, 3000),
});
export const span = z.strictObject({
  ...length,
  kind: z.literal('span'),
  height,
  at: millimetres(0, 3000),
  value: positive(6000),
});
export const plumb = z.strictObject({
  ...common,
  kind: z.literal('plumb'),
  wall,
  at: millimetres(-3000, 3000),
  gaps: z
    .array(z.strictObject({ height, value: millimetres(-300, 600), sd: positive(100).optional() }))
    .min(2, 'a plumb reading needs at least two gaps; add another height')
    .max(50),
});
export const straightedge = z.strictObject({
  ...common,
  kind: z.literal('straightedge'),
  wall,
  from: station,
  to: station,
  value: millimetres(-150, 150),
});
export const square = z.strictObject({
  ...length,
  kind: z.literal('square'),
  side,
  height,
  alongBack: positive(4000),
  alongSide: positive(4000),
  value: positive(6000),
});
export const angle = z.strictObject({
  ...common,
  kind: z.literal('angle'),
  side,
  height,
  /** degrees */ value: z.number().min(60).max(120),
});
export const diagonal = z.strictObject({
  ...length,
  kind: z.literal('diagonal'),
  from: cornerPoint,
  to: cornerPoint,
  value: positive(8000),
});
export const depth = z.strictObject({
  ...length,
  kind: z.literal('depth'),
  wall: side,
  height,
  value: positive(4000),
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
export type Side = z.infer<typeof side>;
export type WallName = z.infer<typeof wall>;
export type Station = z.infer<typeof station>;
