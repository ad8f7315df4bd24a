import { z } from 'zod';
import { jobSchema } from '../core';
import type { Draft } from './draft';
import { isFieldKey } from './path';
import { usable } from './usable';

const item = z.looseObject({ id: z.string(), kind: z.string() });
const stud = z.looseObject({ id: z.string(), wall: z.string() });
const kept = z.object({
  id: z.string(),
  job: z.looseObject({ readings: z.array(item), fixtures: z.array(item), studs: z.array(stud).default([]) }),
  // A text that belongs to no field is none that can be shown.
  typed: z
    .record(z.string(), z.string())
    .transform((typed) => Object.fromEntries(Object.entries(typed).filter(([key]) => isFieldKey(key)))),
});

/** A draft read back from storage; null where it is not one that this version understands. */
export function keptDraft(value: unknown): Draft | null {
  const parsed = kept.safeParse(value);
  if (!parsed.success) return null;
  const { readings, fixtures, studs, ...rest } = parsed.data.job;
  const sections = jobSchema.safeParse({ ...rest, readings: [], fixtures: [], studs: [] });
  if (!sections.success) return null;
  const draft = { ...parsed.data, job: { ...sections.data, readings, fixtures, studs } } as Draft;
  return usable(draft).ok ? draft : null;
}
