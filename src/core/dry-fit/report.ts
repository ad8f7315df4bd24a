import type { Vec3 } from '../piece';

/** Misfit above which a template is not to be cut from, mm. */
export const DRY_FIT_TOLERANCE = 0.1;

/** How an edge lies against what it must clear, its joint taken off; mm, both 0 where it fits. */
export interface EdgeFit {
  /** `left`, `foot`, `hole valve` */
  edge: string;
  /** how far it reaches into its joint or beyond, at worst */
  overlap: number;
  /** how far it stands off beyond its joint, at worst */
  gap: number;
  /** place of the worse of the two, in the alcove's frame */
  at: Vec3;
}

export interface PieceFit {
  /** `panels.left`, or the piece's id */
  piece: string;
  edges: EdgeFit[];
}

/** What comes of folding the templates, as they stand in their files, up into the adjusted alcove. */
export interface DryFit {
  /** mm */
  tolerance: number;
  /** true where every template could be read and no edge misses by more than the tolerance */
  fits: boolean;
  worst: { piece: string; edge: string; kind: 'overlap' | 'gap'; by: number } | null;
  pieces: PieceFit[];
  /** templates that are missing or could not be read, with a sentence that says why */
  unread: { piece: string; why: string }[];
}
