import type { EdgeAt } from './clearance';

/** Points of an edge: position across (`at`) at each place along it. */
export interface EdgeSample {
  along: number;
  at: number;
}

/** Straight joins keep within this of the edge at their middle and a quarter, mm: under half of what the outline promises. */
const CHORD_TOLERANCE = 0.02;
const FIRST_PIECES = 16;
const DEEPEST = 8;

/**
 * Samples an edge from `from` to `to` (either order), closer together where it curves.
 * @param kinks places where the edge may turn sharply; each within the range becomes a sample
 */
export function sampleEdge(
  edge: EdgeAt,
  from: number,
  to: number,
  kinks: readonly number[] = [],
  pieces = FIRST_PIECES,
): EdgeSample[] {
  const sample = (along: number): EdgeSample => ({ along, at: edge(along).value });
  const samples = [sample(from)];
  for (const along of firstEnds(from, to, kinks, pieces))
    split(samples.at(-1)!, sample(along), DEEPEST, sample, samples);
  return samples;
}

/** Ends of the first pieces, in order: even steps and the kinks. */
function firstEnds(from: number, to: number, kinks: readonly number[], pieces: number): number[] {
  const even = Array.from({ length: pieces }, (_, k) => from + ((to - from) * (k + 1)) / pieces);
  const turns = kinks.filter((kink) => (kink - from) * (to - kink) > 0 && !even.includes(kink));
  return [...even, ...turns].sort((a, b) => (a - b) * Math.sign(to - from));
}

function split(
  a: EdgeSample,
  b: EdgeSample,
  depth: number,
  sample: (along: number) => EdgeSample,
  out: EdgeSample[],
): void {
  const middle = sample((a.along + b.along) / 2);
  const strays = ({ along, at }: EdgeSample): boolean =>
    Math.abs(at - (a.at + ((along - a.along) / (b.along - a.along)) * (b.at - a.at))) > CHORD_TOLERANCE;
  // An S passes through the middle of its chord, and is farthest from it near a quarter.
  if (depth > 0 && (strays(middle) || strays(sample(a.along + (b.along - a.along) / 4)))) {
    split(a, middle, depth - 1, sample, out);
    split(middle, b, depth - 1, sample, out);
  } else {
    out.push(b);
  }
}
