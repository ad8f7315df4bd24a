/** Whitened residuals of every row with the rows of Q behind their cofactors I − Q Qᵀ. */
export interface Residuals {
  misfit: Float64Array;
  orthogonal: readonly Float64Array[];
}

/** Residuals once some rows are taken to be wrong by an unknown amount (mean shift; equal to leaving them out). */
export interface Given {
  /** per row: its residual, cofactor and the drop in the sum of squares if it were taken to be wrong as well */
  misfit: Float64Array;
  redundancy: Float64Array;
  gain: Float64Array;
  /** per row taken to be wrong, in order: its error (observed less true, in sigmas) and that estimate's sigma */
  errors: { value: number; sd: number }[];
  /** covariance of those errors */
  errorCovariance: number[][];
}

/** A row with less redundancy than this cannot be tested: nothing else says what it should be. */
const LEAST_REDUNDANCY = 1e-6;

/** Entry of the residual cofactors I − Q Qᵀ. */
export function residualCofactor({ orthogonal }: Pick<Residuals, 'orthogonal'>, i: number, j: number): number {
  const a = orthogonal[i]!;
  const b = orthogonal[j]!;
  let product = 0;
  for (let k = 0; k < a.length; k++) product += a[k]! * b[k]!;
  return (i === j ? 1 : 0) - product;
}

/** Correlation of two rows' residuals; ±1: whatever makes one look wrong makes the other look as wrong. */
export const residualCorrelation = (residuals: Pick<Residuals, 'orthogonal'>, i: number, j: number): number =>
  residualCofactor(residuals, i, j) / Math.sqrt(residualCofactor(residuals, i, i) * residualCofactor(residuals, j, j));

/**
 * Residuals given that the rows `wrong` are: v − P_S P_SS⁻¹ v_S and P − P_S P_SS⁻¹ P_Sᵀ, row by row
 * (Kok 1984, On data snooping and multiple outlier testing, NOAA TR NOS NGS 30; from memory).
 * @returns null where the rest of the data do not tell the size of every one of these errors
 */
export function given(residuals: Residuals, wrong: readonly number[]): Given | null {
  const { misfit, orthogonal } = residuals;
  const lines = wrong.map((row) => orthogonal.map((_, i) => residualCofactor(residuals, i, row)));
  const inverse = invert(wrong.map((_, a) => wrong.map((row) => lines[a]![row]!)));
  if (inverse === null) return null;
  const errors = inverse.map((line, a) => ({
    value: line.reduce((sum, entry, b) => sum + entry * misfit[wrong[b]!]!, 0),
    sd: Math.sqrt(line[a]!),
  }));
  const left = Float64Array.from(misfit);
  const redundancy = new Float64Array(misfit.length);
  const gain = new Float64Array(misfit.length);
  for (let i = 0; i < misfit.length; i++) {
    let cofactor = residualCofactor(residuals, i, i);
    for (let a = 0; a < wrong.length; a++) {
      left[i]! -= lines[a]![i]! * errors[a]!.value;
      for (let b = 0; b < wrong.length; b++) cofactor -= lines[a]![i]! * inverse[a]![b]! * lines[b]![i]!;
    }
    const testable = cofactor > LEAST_REDUNDANCY && !wrong.includes(i);
    redundancy[i] = testable ? cofactor : 0;
    gain[i] = testable ? left[i]! ** 2 / cofactor : 0;
  }
  return { misfit: left, redundancy, gain, errors, errorCovariance: inverse };
}

/** Inverse of a small symmetric positive matrix by Gauss–Jordan; null where a pivot vanishes. */
function invert(matrix: number[][]): number[][] | null {
  const n = matrix.length;
  const work = matrix.map((line, i) => [...line, ...Array.from({ length: n }, (_, j) => (i === j ? 1 : 0))]);
  for (let k = 0; k < n; k++) {
    const pivot = work[k]![k]!;
    if (pivot < LEAST_REDUNDANCY) return null;
    work[k] = work[k]!.map((entry) => entry / pivot);
    for (let i = 0; i < n; i++) {
      if (i === k) continue;
      const factor = work[i]![k]!;
      work[i] = work[i]!.map((entry, j) => entry - factor * work[k]![j]!);
    }
  }
  return work.map((line) => line.slice(n));
}
