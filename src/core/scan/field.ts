/** h = c0 + c1 a + c2 b + c3 ab + c4 a² + c5 b², lengths in m within, mm outside. */
export type Field = Float64Array;

export const fieldAt = (c: Field, a: number, b: number): number => {
  const u = a * 1e-3;
  const v = b * 1e-3;
  return 1e3 * (c[0]! + u * (c[1]! + c[3]! * v + c[4]! * u) + v * (c[2]! + c[5]! * v));
};

/** ∂h/∂a and ∂h/∂b */
export const fieldSlope = (c: Field, a: number, b: number): [number, number] => {
  const [u, v] = [a * 1e-3, b * 1e-3];
  return [c[1]! + c[3]! * v + 2 * c[4]! * u, c[2]! + c[3]! * u + 2 * c[5]! * v];
};

export const median = (values: ArrayLike<number>): number => medianOfSorted(Float64Array.from(values).sort());

/** @param sorted rising */
export function medianOfSorted(sorted: Float64Array): number {
  const middle = sorted.length >> 1;
  return sorted.length % 2 === 1 ? sorted[middle]! : (sorted[middle - 1]! + sorted[middle]!) / 2;
}
