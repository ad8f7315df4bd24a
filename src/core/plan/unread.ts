import type { Reading } from '../job-file';

type WithoutValue<R> = R extends { gaps: unknown }
  ? Omit<R, 'gaps' | 'id'> & { gaps: { height: number }[] }
  : Omit<R, 'value' | 'repeats' | 'history' | 'id'>;
type Each<R> = R extends Reading ? WithoutValue<R> : never;

/** A reading still to be taken: kind and place, without id and value; a plumb reading's gaps have heights only. */
export type Unread = Each<Reading>;

export function unread(reading: Reading): Unread {
  const { id: _, ...rest } = reading;
  if (rest.kind === 'plumb') return { ...rest, gaps: rest.gaps.map(({ height }) => ({ height })) };
  const { value: __, ...place } = rest;
  return place;
}
