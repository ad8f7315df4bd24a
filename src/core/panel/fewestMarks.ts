/** A curve as samples, `along` strictly increasing; mm. */
export interface CurvePoint {
  along: number;
  at: number;
}

/** Chords this near in length count as equal, so that rounding does not choose between them, mm. */
const TIE = 1e-6;

/**
 * Marks for an edge: the fewest samples that, joined by straight cuts, keep within `tolerance` of every sample, and
 * never fewer than both ends and the middle.
 * @returns ascending indices into `points`
 */
export function fewestMarks(points: readonly CurvePoint[], tolerance: number): number[] {
  const marks = fewestChords(points, tolerance);
  if (marks.length > 2 || points.length < 3) return marks;
  const middle = middleIndex(points);
  const upper = fewestChords(points.slice(middle), tolerance);
  return [...fewestChords(points.slice(0, middle + 1), tolerance), ...upper.slice(1).map((i) => i + middle)];
}

/**
 * Shortest path over the admissible chords, each tested in constant time by narrowing the range of slopes that see
 * past the samples between (Imai and Iri, Polygonal approximations of a curve, 1988). Of equally few chords, those
 * whose longest is shortest. Where a curve does not advance, neighbours are joined one by one.
 */
export function fewestChords(points: readonly CurvePoint[], tolerance: number): number[] {
  const count = points.length;
  const cuts = new Array<number>(count).fill(Number.POSITIVE_INFINITY);
  const longest = new Array<number>(count).fill(Number.POSITIVE_INFINITY);
  const from = new Array<number>(count).fill(-1);
  cuts[0] = 0;
  longest[0] = 0;
  const join = (i: number, j: number, run: number): void => {
    const span = Math.max(longest[i]!, run);
    if (cuts[i]! + 1 > cuts[j]! || (cuts[i]! + 1 === cuts[j]! && span >= longest[j]! - TIE)) return;
    cuts[j] = cuts[i]! + 1;
    longest[j] = span;
    from[j] = i;
  };
  for (let i = 0; i < count - 1; i++) {
    let low = Number.NEGATIVE_INFINITY;
    let high = Number.POSITIVE_INFINITY;
    for (let j = i + 1; j < count && low <= high; j++) {
      const run = points[j]!.along - points[i]!.along;
      if (run <= 0) {
        if (j === i + 1) join(i, j, 0);
        break;
      }
      const slope = (points[j]!.at - points[i]!.at) / run;
      if (slope >= low && slope <= high) join(i, j, run);
      low = Math.max(low, slope - tolerance / run);
      high = Math.min(high, slope + tolerance / run);
    }
  }
  const marks: number[] = [];
  for (let j = count - 1; j >= 0; j = from[j]!) marks.unshift(j);
  return marks;
}

function middleIndex(points: readonly CurvePoint[]): number {
  const target = (points[0]!.along + points.at(-1)!.along) / 2;
  let nearest = 1;
  for (let i = 1; i < points.length - 1; i++) {
    if (Math.abs(points[i]!.along - target) < Math.abs(points[nearest]!.along - target)) nearest = i;
  }
  return nearest;
}

/** Largest distance between the straight joins of the marks and the samples, measured across, mm. */
export function misfitOf(points: readonly CurvePoint[], marks: readonly number[]): number {
  let worst = 0;
  for (let k = 1; k < marks.length; k++) {
    const a = points[marks[k - 1]!]!;
    const b = points[marks[k]!]!;
    for (let i = marks[k - 1]! + 1; i < marks[k]!; i++) {
      const share = (points[i]!.along - a.along) / (b.along - a.along);
      worst = Math.max(worst, Math.abs(points[i]!.at - (a.at + share * (b.at - a.at))));
    }
  }
  return worst;
}
