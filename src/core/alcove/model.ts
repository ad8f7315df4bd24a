import type { Job, Priors, WallName } from '../job-file';
import {
  anchoredBasis,
  type Basis,
  basisSurface,
  type Monomial,
  polynomialBasis,
  type Surface,
  splineBasis,
  sumSurface,
} from '../surface';
import type { Alcove } from './alcove';

/** One unknown of the adjustment. */
export interface Parameter {
  /** stable key, such as `left.bowUp` */
  name: string;
  /** in words, such as `left wall: bow up the wall` */
  label: string;
  /** standard deviation of the prior (mean 0) in the parameter's own unit; null: a size or position, which has none */
  priorSd: number | null;
  /** a spline coefficient: one of many that only together shape a wall */
  local: boolean;
  /** starting value; for a size also what is drawn while nothing measures it */
  start: number;
  /** no part of the alcove, and not worth telling that it is assumed */
  quiet?: true;
  /** one of too many to list each */
  unlisted?: true;
}

/** Functions whose coefficients are the parameters from an offset on. */
export interface SurfacePiece {
  basis: Basis;
  offset: number;
}

/** The unknowns of an alcove, and how to build the alcove from their values. */
export interface AlcoveModel {
  parameters: Parameter[];
  build(values: ArrayLike<number>): Alcove;
  /** what the surfaces are the sums of: the minimum basis first */
  pieces: Record<Part, SurfacePiece[]>;
}

export type Part = 'back' | 'left' | 'right' | 'rim' | 'front.left' | 'front.right';
interface Term {
  exponents: Monomial;
  name: string;
  words: string;
  prior: keyof Priors | null;
}

const term = (i: number, j: number, name: string, words: string, prior: keyof Priors | null): Term => ({
  exponents: [i, j],
  name,
  words,
  prior,
});

/** By the choice of origin and yaw the back wall has neither a constant nor a term in x. */
const BACK_TERMS = [
  term(0, 1, 'plumb', 'out of plumb', 'plumb'),
  term(1, 1, 'twist', 'twist', 'twist'),
  term(2, 0, 'bowAcross', 'bow across the wall', 'bow'),
  term(0, 2, 'bowUp', 'bow up the wall', 'bow'),
];
const SIDE_TERMS = [
  term(0, 0, 'position', 'position', null),
  term(0, 1, 'plumb', 'out of plumb', 'plumb'),
  term(1, 0, 'square', 'out of square', 'square'),
  term(1, 1, 'twist', 'twist', 'twist'),
  term(0, 2, 'bowUp', 'bow up the wall', 'bow'),
  term(2, 0, 'bowAcross', 'bow across the wall', 'bow'),
];
const RIM_TERMS = [
  term(0, 0, 'height', 'height', null),
  term(1, 0, 'levelAlong', 'level along the back wall', 'rimLevel'),
  term(0, 1, 'levelAcross', 'level from back to front', 'rimLevel'),
  term(2, 0, 'bowAlong', 'bow along the back wall', 'bow'),
  term(0, 2, 'bowAcross', 'bow from back to front', 'bow'),
];
const FRONT_TERMS = [term(0, 0, 'position', 'position', null), term(0, 1, 'plumb', 'out of plumb', 'frontPlumb')];

/** Half of a common alcove's 60 in width: drawn, and marked assumed, until a reading gives the width. */
const ASSUMED_HALF_WIDTH = 762;

const PARTS: { part: Part; words: string; terms: Term[]; start: (job: Job) => number }[] = [
  { part: 'back', words: 'back wall', terms: BACK_TERMS, start: () => 0 },
  { part: 'left', words: 'left wall', terms: SIDE_TERMS, start: () => -ASSUMED_HALF_WIDTH },
  { part: 'right', words: 'right wall', terms: SIDE_TERMS, start: () => ASSUMED_HALF_WIDTH },
  { part: 'rim', words: 'rim', terms: RIM_TERMS, start: (job) => job.rim.apronHeight - job.levelAboveFloor },
  { part: 'front.left', words: 'front edge of the left wall', terms: FRONT_TERMS, start: (job) => job.rim.width },
  { part: 'front.right', words: 'front edge of the right wall', terms: FRONT_TERMS, start: (job) => job.rim.width },
];

/** A wall whose readings call for more than plane, twist and bow: a spline over it, every coefficient with a prior. */
export interface Unevenness {
  wall: WallName;
  /** stretch of the wall that the spline covers, mm */
  at: [number, number];
  height: [number, number];
  /** prior standard deviation of its coefficients, mm */
  sd: number;
  /** length of its intervals, mm; as hand readings can tell them apart unless given */
  interval?: number;
  /** chosen from a scan's cells, together with which its prior counts */
  scanned?: true;
}

/** Spline intervals are about this long, mm: humps narrower than a few hundred mm stay out of reach of hand readings. */
const INTERVAL = 450;

/**
 * The unknowns of the minimum basis of design section 2 (back 4, each side 6, rim 5, each front edge 2), then the
 * spline coefficients of walls that are uneven, then others that are no part of the alcove.
 */
export function alcoveModel(
  job: Job,
  uneven: readonly Unevenness[] = [],
  others: readonly Parameter[] = [],
): AlcoveModel {
  const parameters: Parameter[] = [];
  const offset = {} as Record<Part, number>;
  const bases = {} as Record<Part, Basis>;
  for (const { part, words, terms, start } of PARTS) {
    offset[part] = parameters.length;
    bases[part] = polynomialBasis(terms.map(({ exponents }) => exponents));
    for (const { exponents, name, words: what, prior } of terms) {
      const [i, j] = exponents;
      parameters.push({
        name: `${part}.${name}`,
        label: `${words}: ${what}`,
        priorSd: prior === null ? null : job.priors[prior] * 1e-3 ** (i + j),
        local: false,
        start: prior === null ? start(job) : 0,
      });
    }
  }
  const splines = uneven.map((each) => {
    const basis = unevenBasis(each);
    const from = parameters.length;
    const { words } = PARTS.find(({ part }) => part === each.wall)!;
    for (let k = 0; k < basis.count; k++) {
      parameters.push({
        name: `${each.wall}.uneven.${k}`,
        label: `${words}: unevenness`,
        priorSd: each.sd,
        local: true,
        start: 0,
        ...(each.scanned && { unlisted: true }),
      });
    }
    return { wall: each.wall, basis, offset: from };
  });
  parameters.push(...others);
  const pieces = {} as AlcoveModel['pieces'];
  for (const { part } of PARTS) {
    pieces[part] = [{ basis: bases[part], offset: offset[part] }, ...splines.filter(({ wall }) => wall === part)];
  }

  return {
    parameters,
    pieces,
    build(values) {
      const surface = (part: Part): Surface =>
        pieces[part].map(({ basis, offset }): Surface => basisSurface(basis, values, offset)).reduce(sumSurface);
      return {
        back: surface('back'),
        left: surface('left'),
        right: surface('right'),
        rim: surface('rim'),
        front: { left: surface('front.left'), right: surface('front.right') },
      };
    },
  };
}

/** On the back wall the spline leaves the origin and the direction of the level line there as they are. */
export function unevenBasis({ wall, at, height, interval = INTERVAL }: Omit<Unevenness, 'sd'>): Basis {
  const stretch = ([from, to]: [number, number]) => ({
    from,
    to,
    intervals: Math.max(2, Math.round((to - from) / interval)),
  });
  const basis = splineBasis(stretch(at), stretch(height));
  return wall === 'back' ? anchoredBasis(basis) : basis;
}
