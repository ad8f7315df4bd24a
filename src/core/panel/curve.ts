import type { EdgeAt } from './edges';

/** Points of an edge: position across (`at`) at each place along it. */
export interface EdgeSample {
  along: number;
  at: number;
}

/** Straight joins between samples keep within this of the edge, mm; half of what the outline promises. */
const CHORD_TOLERANCE = 0.02;
const FIRST_SPLITS = 16;
const DEEPEST = 8;

/** Samples an edge from `from` to `to` (either order), closer together where it curves. */
export function sampleEdge(edge: EdgeAt, from: number, to: number): EdgeSample[] {
  const sample = (along: number): EdgeSample => ({ along, at: edge(along).value });
  const samples = [sample(from)];
  for (let k = 1; k <= FIRST_SPLITS; k++) {
    split(samples.at(-1)!, sample(from + ((to - from) * k) / FIRST_SPLITS), DEEPEST, sample, samples);
  }
  return samples;
}

function split(
  a: EdgeSample,
  b: EdgeSample,
  depth: number,
  sample: (along: number) => EdgeSample,
  out: EdgeSample[],
): void {
  const middle = sample((a.along + b.along) / 2);
  if (depth > 0 && Math.abs(middle.at - (a.at + b.at) / 2) > CHORD_TOLERANCE) {
    split(a, middle, depth - 1, sample, out);
    split(middle, b, depth - 1, sample, out);
  } else {
    out.push(b);
  }
}
