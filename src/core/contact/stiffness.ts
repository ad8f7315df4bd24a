/** Elastic properties of a sheet: u along its length, v across; N/mm² and mm. */
export interface SheetMaterial {
  thickness: number;
  /** Young's moduli along u and v, N/mm² */
  modulusU: number;
  modulusV: number;
  /** Poisson's ratio ν_uv: contraction along v under stress along u */
  poisson: number;
  /** shear modulus in the sheet's plane, N/mm²; of an isotropic sheet E / 2(1 + ν) */
  shear: number;
}

/** Bending stiffnesses of a thin orthotropic plate, N·mm: energy ½(u wᵤᵤ² + 2 cross wᵤᵤ wᵥᵥ + v wᵥᵥ² + 4 twist wᵤᵥ²). */
export interface BendingStiffness {
  u: number;
  v: number;
  cross: number;
  twist: number;
}

/** Of a sheet alike in all directions. */
export const isotropic = (modulus: number, poisson: number, thickness: number): SheetMaterial => ({
  thickness,
  modulusU: modulus,
  modulusV: modulus,
  poisson,
  shear: modulus / (2 * (1 + poisson)),
});

/**
 * Of a sheet that is stiffer one way than the other. Where its shear modulus has not been measured Huber's estimate
 * stands for it: √(EᵤEᵥ) / 2(1 + √(ν_uv ν_vu)) (Timoshenko and Woinowsky-Krieger, 2nd ed., section 86).
 */
export const orthotropic = (modulusU: number, modulusV: number, poisson: number, thickness: number): SheetMaterial => ({
  thickness,
  modulusU,
  modulusV,
  poisson,
  shear: Math.sqrt(modulusU * modulusV) / (2 * (1 + poisson * Math.sqrt(modulusV / modulusU))),
});

/**
 * Kirchhoff plate: D = E t³ / 12(1 − ν_uv ν_vu), ν_vu = ν_uv E_v / E_u; twist G t³ / 12.
 * Timoshenko and Woinowsky-Krieger, Theory of Plates and Shells, 2nd ed., section 85.
 */
export function bendingStiffness({ thickness, modulusU, modulusV, poisson, shear }: SheetMaterial): BendingStiffness {
  const across = (poisson * modulusV) / modulusU;
  const share = thickness ** 3 / (12 * (1 - poisson * across));
  return {
    u: modulusU * share,
    v: modulusV * share,
    cross: across * modulusU * share,
    twist: (shear * thickness ** 3) / 12,
  };
}
