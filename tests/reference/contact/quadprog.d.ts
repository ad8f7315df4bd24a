declare module 'quadprog' {
  /** min ½bᵀDb − dᵀb subject to Aᵀb ≥ b0; all arrays counted from 1 */
  export function solveQP(
    D: number[][],
    d: number[],
    A: number[][],
    b0: number[],
  ): { solution: number[]; value: number[]; message: string };
}
