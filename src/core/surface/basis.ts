/** Functions φ_k(a, b) whose weighted sum is a height field; a and b in mm. */
export interface Basis {
  count: number;
  /** writes ∂^(da+db) φ_k / ∂a^da ∂b^db at (a, b) for every k into `out` from `offset` on */
  fill(out: Float64Array, offset: number, a: number, b: number, da: number, db: number): void;
}

/** The basis less each function's height and slope along a at the origin, so that the frame stays where it is. */
export function anchoredBasis(basis: Basis): Basis {
  const height = new Float64Array(basis.count);
  const slope = new Float64Array(basis.count);
  basis.fill(height, 0, 0, 0, 0, 0);
  basis.fill(slope, 0, 0, 0, 1, 0);
  return {
    count: basis.count,
    fill(out, offset, a, b, da, db) {
      basis.fill(out, offset, a, b, da, db);
      if (db > 0 || da > 1) return;
      for (let k = 0; k < basis.count; k++) out[offset + k]! -= da === 1 ? slope[k]! : height[k]! + a * slope[k]!;
    },
  };
}
