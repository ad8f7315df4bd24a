import { type Band, factorBand, substituteBand } from './band';
import { type Patches, patchesOn, relaxPatches } from './patches';
import { coarserMarks, coarserStates, GONE, nearby, rowStates, WHOLE } from './rowState';
import { restAfterSweep, sweepBack, sweepFromZero } from './smooth';
import { CENTRE, SIZE, type Stencil } from './stencil';
import { diagonalOf, stencilBand } from './stencilBand';
import { copiesRow, emptyTied, type Rows, type Tied, tiedTimes, truncate } from './truncated';
import { coarsenRows, prolong, restrict } from './twoGrid';

/**
 * A multigrid V-cycle for the free splines of a plate, on a stack of grids each twice as coarse as the one above. Coarse
 * splines lose what of them is held on the finest grid (truncated basis: Kornhuber, Numer. Math. 69 (1994) 167–184).
 */
export interface Cycle {
  /** of the finest grid, the free splines' */
  matrix: Tied;
  /** Takes up which splines are held, and how strongly the others are tied, N/mm³. */
  load(held: Uint8Array, tie: number): void;
  /** What one cycle, from nought, makes of A x = b: symmetric in b. */
  run(b: Float64Array, x: Float64Array): void;
}

interface Level {
  plain: Stencil;
  matrix: Tied;
  rows: Rows;
  /** states of the splines' children on the finest grid */
  children: Uint8Array;
  patches: Patches | null;
  b: Float64Array;
  x: Float64Array;
  rest: Float64Array;
}

/**
 * @param plates the whole plate's matrix on each grid, finest first
 * @param areas ∫∫ of each spline of the finest, mm²
 */
export function multigridCycle(plates: readonly Stencil[], areas: Float64Array): Cycle {
  const levels = plates.map((plain): Level => {
    const { across, up } = plain;
    const size = across * up;
    const field = (): Float64Array => new Float64Array(size);
    return {
      plain,
      matrix: emptyTied(across, up),
      rows: { states: new Uint8Array(size), stale: new Uint8Array(size) },
      children: new Uint8Array(size),
      patches: null,
      b: field(),
      x: field(),
      rest: field(),
    };
  });
  const [finest, coarsest] = [levels[0]!, levels[levels.length - 1]!];
  let direct: Band;
  let first = true;

  function down(depth: number, b: Float64Array, x: Float64Array): void {
    const { matrix, rest, patches } = levels[depth]!;
    const next = levels[depth + 1];
    if (!next) {
      x.set(b);
      substituteBand(direct, x);
      return;
    }
    sweepFromZero(matrix, b, x);
    if (patches) {
      relaxPatches(patches, matrix, b, x, false);
      tiedTimes(matrix, x, rest);
      for (let k = 0; k < rest.length; k++) rest[k] = b[k]! - rest[k]!;
    } else restAfterSweep(matrix, x, rest);
    restrict(rest, next.b, matrix.across, matrix.up);
    down(depth + 1, next.b, next.x);
    prolongFree(next.x, x, matrix, rest);
    if (patches) relaxPatches(patches, matrix, b, x, true);
    sweepBack(matrix, b, x);
  }

  return {
    matrix: finest.matrix,
    load(held, tie) {
      const { matrix, plain, rows, children } = finest;
      const { across, up } = matrix;
      const changed = held.map((value, k) => (first || value === children[k] ? 1 : 0));
      first = false;
      nearby(changed, across, up, rows.stale);
      rowStates(held, across, up, rows.states);
      for (let k = 0; k < held.length; k++) {
        children[k] = held[k] ? GONE : WHOLE;
        matrix.ties[k] = held[k] ? 0 : tie * areas[k]!;
      }
      truncate(plain, held, rows, matrix.entries);
      for (let depth = 1; depth < levels.length; depth++) {
        loadCoarser(levels[depth - 1]!, levels[depth]!, depth < levels.length - 1);
      }
      direct = factored(coarsest.matrix);
    },
    run: (b, x) => down(0, b, x),
  };
}

function loadCoarser(fine: Level, coarse: Level, relaxed: boolean): void {
  const { across, up } = fine.matrix;
  const { matrix, plain, rows, children } = coarse;
  coarserStates(fine.rows.states, across, up, rows.states);
  coarserMarks(fine.rows.stale, across, up, rows.stale);
  coarserStates(fine.children, across, up, children);
  restrict(fine.matrix.ties, matrix.ties, across, up);
  const wanted = rows.stale.map((stale, k) =>
    stale && !copiesRow(rows.states[k]!, plain.entries, k * SIZE, matrix.entries) ? 1 : 0,
  );
  coarsenRows(fine.matrix, wanted, matrix);
  coarse.patches = relaxed ? patchesOn(matrix, children) : null;
}

/** The coarse correction, added where a row is still there. */
function prolongFree(coarse: Float64Array, x: Float64Array, { across, up, entries }: Tied, work: Float64Array): void {
  work.fill(0);
  prolong(coarse, work, across, up);
  for (let k = 0; k < x.length; k++) if (entries[k * SIZE + CENTRE]! > 0) x[k] = x[k]! + work[k]!;
}

/** Factor of the smallest system; a share of the diagonal is added, more and more of it until it goes. */
function factored(tied: Tied, share = 1e-12): Band {
  const matrix = stencilBand(tied);
  const { rows, band } = matrix;
  const diagonal = diagonalOf(tied);
  const largest = diagonal.reduce((most, value) => Math.max(most, value), 0);
  diagonal.forEach((value, k) => {
    rows[k * (band + 1) + band] = value + tied.ties[k]! + share * largest + (value <= 0 ? largest || 1 : 0);
  });
  return factorBand(matrix) || share > 1 ? matrix : factored(tied, 100 * share);
}
