import { z } from 'zod';
import { days, lineText, noteText } from './field';

/** What customers are told is not in the price unless it is listed. Common practice, no source. */
const EXCLUSIONS = [
  'repair of framing, wallboard or damp found behind the old walls',
  'moving pipes, valves or drains, and new plumbing parts',
  'electrical work',
  'testing for and removing asbestos or lead',
  'permits and inspections',
];

/** What a quote says beside its lines. */
export const quote = z.strictObject({
  /** whom it is for */
  client: lineText(200).default(''),
  /** who makes the offer: name, address, licence */
  from: noteText.default(''),
  number: lineText(60).default(''),
  /** `YYYY-MM-DD`; without it the day it is made */
  date: z.iso.date().optional(),
  /** days that the offer holds */
  validity: days(1, 365).default(30),
  exclusions: z.array(lineText(300)).max(30).default(EXCLUSIONS),
});

export type Quote = z.infer<typeof quote>;
