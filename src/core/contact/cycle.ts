import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import { smooth } from './smooth';
import { CENTRE, rowTimes, SIZE, type Stencil, WIDTH } from './stencil';
import { coarsen, prolong, restrict } from './twoGrid';

/** A multigrid V-cycle for A x = b, on a stack of grids each twice as coarse as the one above. */
export interface Cycle {
  /** Takes up a new matrix: whole rows may have gone (see `withoutRows`). */
  load(matrix: Stencil): void;
  /** Improves x. */
  run(b: Float64Array, x: Float64Array): void;
}

interface Level {
  matrix: Stencil;
  b: Float64Array;
  x: Float64Array;
  rest: Float64Array;
}

/** @param sizes numbers of splines along and up, finest first, as `coarserGrid` gives them */
export function multigridCycle(sizes: readonly { across: number; up: number }[]): Cycle {
  const levels = sizes.map(({ across, up }, depth): Level => {
    const field = (): Float64Array => new Float64Array(across * up);
    return {
      // The finest matrix is the one that is loaded.
      matrix: { across, up, entries: new Float64Array(depth === 0 ? 0 : across * up * SIZE) },
      b: field(),
      x: field(),
      rest: field(),
    };
  });
  const coarsest = levels[levels.length - 1] as Level;
  let solveCoarsest: (b: Float64Array) => Float64Array = (b) => b;

  function down(depth: number, b: Float64Array, x: Float64Array): void {
    const level = levels[depth] as Level;
    const next = levels[depth + 1];
    if (!next) {
      x.set(solveCoarsest(b));
      return;
    }
    const { matrix, rest } = level;
    smooth(matrix, b, x);
    residual(matrix, b, x, rest);
    restrict(rest, next.b, matrix.across, matrix.up);
    next.x.fill(0);
    down(depth + 1, next.b, next.x);
    prolongFree(next.x, x, matrix);
    smooth(matrix, b, x);
  }

  return {
    load(matrix) {
      (levels[0] as Level).matrix = matrix;
      for (let depth = 1; depth < levels.length; depth++) {
        coarsen((levels[depth - 1] as Level).matrix, (levels[depth] as Level).matrix);
      }
      solveCoarsest = directly(coarsest.matrix);
    },
    run: (b, x) => down(0, b, x),
  };
}

/** The coarse correction, added where a row is still there. */
function prolongFree(coarse: Float64Array, x: Float64Array, { across, up, entries }: Stencil): void {
  const before = x.slice();
  prolong(coarse, x, across, up);
  for (let k = 0; k < x.length; k++) if ((entries[k * SIZE + CENTRE] as number) <= 0) x[k] = before[k] as number;
}

function residual({ across, up, entries }: Stencil, b: Float64Array, x: Float64Array, out: Float64Array): void {
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const k = i + j * across;
      const there = (entries[k * SIZE + CENTRE] as number) > 0;
      out[k] = there ? (b[k] as number) - rowTimes(entries, x, i, j, across, up) : 0;
    }
  }
}

/** Solves the smallest system by Cholesky's method; a share of the diagonal is added, more and more of it until it goes. */
function directly(stencil: Stencil, share = 1e-12): (b: Float64Array) => Float64Array {
  const { across, up, entries } = stencil;
  const size = across * up;
  const matrix = Matrix.zeros(size, size);
  let largest = 0;
  for (let k = 0; k < size; k++) largest = Math.max(largest, entries[k * SIZE + CENTRE] as number);
  for (let j = 0; j < up; j++) {
    for (let i = 0; i < across; i++) {
      const row = i + j * across;
      const diagonal = entries[row * SIZE + CENTRE] as number;
      for (let q = Math.max(0, 2 - j); q < Math.min(WIDTH, up + 2 - j); q++) {
        for (let p = Math.max(0, 2 - i); p < Math.min(WIDTH, across + 2 - i); p++) {
          const column = i + p - 2 + (j + q - 2) * across;
          if (column > row) continue;
          const entry = entries[row * SIZE + p + WIDTH * q] as number;
          matrix.set(row, column, entry);
          matrix.set(column, row, entry);
        }
      }
      matrix.set(row, row, diagonal + share * largest + (diagonal <= 0 ? largest || 1 : 0));
    }
  }
  const factor = new CholeskyDecomposition(matrix);
  if (!factor.isPositiveDefinite()) return directly(stencil, 100 * share);
  return (b) => Float64Array.from(factor.solve(Matrix.columnVector(b)).getColumn(0));
}
