/** A symmetric positive definite band matrix of so many rows; `rows[k·(band + 1) + band + c − k]` is entry (k, c), c ≤ k. */
export interface Band {
  size: number;
  band: number;
  rows: Float64Array;
}

export const emptyBand = (size: number, band: number): Band => ({
  size,
  band,
  rows: new Float64Array(size * (band + 1)),
});

/**
 * Its Cholesky factor, in place. Golub and Van Loan, Matrix Computations, 4.3.5.
 * @returns false where the matrix is not positive definite to working precision
 */
export function factorBand({ size, band, rows }: Band): boolean {
  const width = band + 1;
  let definite = true;
  for (let i = 0; i < size; i++) {
    const first = Math.max(0, i - band);
    for (let j = first; j <= i; j++) {
      const from = Math.max(first, j - band);
      let sum = rows[i * width + band + j - i]!;
      const [a, b] = [i * width + band - i, j * width + band - j];
      for (let k = from; k < j; k++) sum -= rows[a + k]! * rows[b + k]!;
      if (i === j && !(sum > 0)) definite = false;
      rows[a + j] = i === j ? Math.sqrt(Math.max(sum, 1e-300)) : sum / rows[b + j]!;
    }
  }
  return definite;
}

/** Solves with the factor; x holds the right-hand side first, then the solution. */
export function substituteBand({ size, band, rows }: Band, x: Float64Array): void {
  const width = band + 1;
  for (let i = 0; i < size; i++) {
    const at = i * width + band - i;
    let sum = x[i]!;
    for (let k = Math.max(0, i - band); k < i; k++) sum -= rows[at + k]! * x[k]!;
    x[i] = sum / rows[at + i]!;
  }
  for (let i = size - 1; i >= 0; i--) {
    const at = i * width + band - i;
    const value = x[i]! / rows[at + i]!;
    x[i] = value;
    for (let k = Math.max(0, i - band); k < i; k++) x[k] = x[k]! - rows[at + k]! * value;
  }
}
