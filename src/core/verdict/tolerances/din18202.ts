import type { Limit, ToleranceSet } from './toleranceSet';

const flatnessLengths = [100, 1000, 4000, 10_000, 15_000];

/** DIN 18202, table 2: offset over the length measured, mm. */
const angleRows: readonly (readonly [upTo: number, offset: number])[] = [
  [500, 3],
  [1000, 6],
  [3000, 8],
  [6000, 12],
  [15_000, 16],
  [30_000, 20],
  [Number.POSITIVE_INFINITY, 30],
];

/** Offset from plumb, level or square over a length in mm. */
const angleOffset: Limit = (length) => angleRows.find(([upTo]) => length <= upTo)![1];

/** Depth under a straightedge on two high points: linear between the lengths of table 3, rounded to whole mm. */
const flatness =
  (row: readonly number[]): Limit =>
  (length) => {
    const last = flatnessLengths.length - 1;
    if (length <= flatnessLengths[0]!) return row[0]!;
    if (length >= flatnessLengths[last]!) return row[last]!;
    const i = flatnessLengths.findLastIndex((each) => each <= length);
    const [from, to] = [flatnessLengths[i]!, flatnessLengths[i + 1]!];
    return Math.round(row[i]! + ((row[i + 1]! - row[i]!) * (length - from)) / (to - from));
  };

const din = (
  id: ToleranceSet['id'],
  name: string,
  row: number,
  depths: readonly [number, number, number, number, number],
): ToleranceSet => ({
  id,
  name,
  source: `DIN 18202, table 2 for plumb, level and square, table 3 row ${row} for flatness; as quoted in a trade association's handbook.`,
  about: `Flat within ${depths[1]} mm in 1 m and ${depths[2]} mm in 4 m; plumb, level and square within 3 mm up to 0.5 m, 6 mm up to 1 m, 8 mm up to 3 m.`,
  plumb: angleOffset,
  flat: flatness(depths),
  square: angleOffset,
  level: angleOffset,
});

export const finished = din('finished', 'DIN 18202, finished walls', 6, [3, 5, 10, 20, 25]);
export const finishedStrict = din('finished-strict', 'DIN 18202, finished walls, stricter', 7, [2, 3, 8, 15, 20]);
export const raw = din('raw', 'DIN 18202, unfinished walls', 5, [5, 10, 15, 25, 30]);
