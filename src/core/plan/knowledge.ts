/**
 * What is known about the alcove's parameters: their covariance, p rows of p. Readings are rows of derivatives over
 * sigma, as in the adjustment; what they would bring follows without their values.
 */
export type Knowledge = readonly Float64Array[];

/** A quantity as its derivatives with respect to the parameters. */
type Gradient = ArrayLike<number>;

/** Knowledge after rows are added (weight +1) or taken back (weight −1): rank-one updates (Sherman and Morrison 1950). */
export function updated(knowledge: Knowledge, rows: readonly Gradient[], weight: 1 | -1 = 1): Knowledge {
  const next = knowledge.map((line) => Float64Array.from(line));
  for (const row of rows) {
    const influence = influenceOf(next, row);
    const factor = weight / (1 + weight * product(row, influence));
    next.forEach((line, i) => {
      const scaled = factor * influence[i]!;
      if (scaled !== 0) for (let j = 0; j < line.length; j++) line[j]! -= scaled * influence[j]!;
    });
  }
  return next;
}

/** Covariance of a quantity with every parameter. */
export function influenceOf(knowledge: Knowledge, gradient: Gradient): Float64Array {
  const influence = new Float64Array(knowledge.length);
  for (let j = 0; j < influence.length; j++) {
    const factor = gradient[j]!;
    if (factor === 0) continue;
    const line = knowledge[j]!;
    for (let i = 0; i < influence.length; i++) influence[i]! += factor * line[i]!;
  }
  return influence;
}

/** Quantities whose variance matters. */
export interface Watched {
  influences: Float64Array[];
  variances: Float64Array;
}

export function watch(knowledge: Knowledge, gradients: readonly Gradient[]): Watched {
  const influences = gradients.map((gradient) => influenceOf(knowledge, gradient));
  return { influences, variances: Float64Array.from(influences, (influence, e) => product(gradients[e]!, influence)) };
}

/** Variances of the watched quantities after rows are added. */
export function variancesAfter(
  knowledge: Knowledge,
  { influences, variances }: Watched,
  rows: readonly Gradient[],
): Float64Array {
  const after = Float64Array.from(variances);
  const seen = rows.map((row) => Float64Array.from(influences, (influence) => product(row, influence)));
  const shared = rows.map((row) => {
    const influence = influenceOf(knowledge, row);
    return rows.map((other) => product(other, influence));
  });
  for (let r = 0; r < rows.length; r++) {
    const pivot = 1 + shared[r]![r]!;
    const here = seen[r]!;
    for (let e = 0; e < after.length; e++) after[e]! -= (here[e]! * here[e]!) / pivot;
    for (let q = r + 1; q < rows.length; q++) {
      const factor = shared[q]![r]! / pivot;
      const later = seen[q]!;
      for (let e = 0; e < after.length; e++) later[e]! -= factor * here[e]!;
      for (let t = r; t < rows.length; t++) shared[q]![t]! -= factor * shared[r]![t]!;
    }
  }
  return after;
}

function product(a: Gradient, b: Gradient): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}
