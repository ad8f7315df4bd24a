/** A wall, rim or ceiling along a section, mm: its place across at each depth. */
export interface Profile {
  from: number;
  step: number;
  values: Float64Array;
  /** depth at which it ends towards the room; infinite where it goes on */
  end: number;
  /** what bounds beyond that, such as the floor before the apron; nothing where left out */
  beyond?: number;
  /** a lip before its end that stands in further, such as a header: from which depth on, and how far */
  lip?: { from: number; value: number };
}

/**
 * A plane section through the alcove and a sheet in its final place: level, or plumb. `across` runs along the section,
 * depth away from the wall that the sheet is for; mm.
 */
export interface Section {
  /** where the section lies: its height, or its station on the wall */
  at: number;
  /** ends of the sheet, across */
  sheet: { from: number; to: number };
  /** depth of the sheet's back face */
  back: number;
  /** what bounds the sheet on either side; null where nothing does */
  low: Profile | null;
  high: Profile | null;
}

const PIECES = 32;

/** Samples a bound closely enough that straight joins keep within 0.01 mm of any wall that stands. */
export function profileOf(
  value: (depth: number) => number,
  from: number,
  to: number,
  { end = to, ...more }: Partial<Pick<Profile, 'end' | 'beyond' | 'lip'>> = {},
): Profile {
  const step = Math.max(to - from, 1) / PIECES;
  return {
    from,
    step,
    values: Float64Array.from({ length: PIECES + 1 }, (_, k) => value(from + k * step)),
    end,
    ...more,
  };
}

export function boundAt({ from, step, values }: Profile, depth: number): number {
  const place = Math.min(Math.max((depth - from) / step, 0), values.length - 1);
  const k = Math.min(Math.floor(place), values.length - 2);
  return values[k]! + (place - k) * (values[k + 1]! - values[k]!);
}
