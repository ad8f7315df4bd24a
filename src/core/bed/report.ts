import type { Point } from '../panel';

/** A stretch of the sheet beyond a limit, wall coordinates, mm and mm². */
export interface Patch {
  area: number;
  /** where it is worst, and how much there */
  u: number;
  v: number;
  worst: number;
  /** lower left and upper right corner of the rectangle around it */
  from: Point;
  to: Point;
}

export interface PlaceOnBed {
  u: number;
  v: number;
  /** thickness of the bed, mm, and its standard deviation (1 sigma) from the survey */
  value: number;
  sd: number;
}

/** Where the sheet is held up. */
export interface Contact {
  /** middle of the force */
  u: number;
  v: number;
  /** mm², 0 for a point */
  area: number;
  /** N */
  force: number;
  /**
   * lower left and upper right corner of the rectangle within which it lies: where it touches, and about it where the
   * sheet is nearer to the wall than the survey's ± there (95 %)
   */
  from: Point;
  to: Point;
}

export interface Shim {
  /** from the plumb line (from the back wall on a side wall) and from the level line, mm */
  u: number;
  v: number;
  /** of the shim alone: the adhesive goes on top of it, mm */
  thickness: number;
  /** standard deviation (1 sigma), mm */
  sd: number;
}

/** What a dot of adhesive must hold, N, and its standard deviation (1 sigma) from the survey. */
export interface DotForce {
  u: number;
  v: number;
  pull: number;
  sd: number;
}

/** How far the solver's answer is settled. Energies in N·mm. */
export interface Convergence {
  columns: number;
  rows: number;
  steps: number;
  /** share of the load left out of balance */
  imbalance: number;
  converged: boolean;
  /** pressed all over, on the grid of half as many cells and on this one, counted from the wall */
  energies: { columns: number; rows: number; energy: number }[];
  /** difference of the two, share of the last */
  energyChange: number;
}

/** How a panel's sheet sits on its wall. Lengths in mm, forces in N. */
export interface BedReport {
  /** `follows`: on an even bed; `rigid`: on three points; `bent`: with least energy; `shimmed`: on shims, flat */
  how: 'follows' | 'rigid' | 'bent' | 'shimmed';
  /** thickness of the bed: `value[i][j]` at height i, at j */
  map: { at: number[]; height: number[]; value: number[][]; sd: number[][] };
  thinnest: PlaceOnBed;
  thickest: PlaceOnBed;
  /** mm per m, positive = the sheet leans into the room going up */
  lean: number;
  leanSd: number;
  /** empty where the sheet follows its wall all over or stands on shims */
  contacts: Contact[];
  reach: number;
  /** where the bed is thicker than the adhesive reaches; `worst` is its thickness */
  hollows: (Patch & { sd: number })[];
  strain: {
    /** largest at a face of the sheet from bending, its standard deviation (1 sigma) from the survey, and where */
    max: number;
    sd: number;
    u: number;
    v: number;
    /** smallest radius it is bent to, mm; null where it stays flat */
    radius: number | null;
    limit: number;
    overBent: Patch[];
  };
  springBack: {
    /** what each dot (or each stretch of a bead) must hold against the sheet's springing back; less than 0: pressed on */
    dots: DotForce[];
    largest: DotForce | null;
    /** of all that pull, and its standard deviation (1 sigma) */
    total: number;
    totalSd: number;
  };
  shims: {
    to: 'flat' | 'plumb';
    list: Shim[];
    /** lean of the sheet once shimmed, mm per m */
    lean: number;
  };
  /** null where nothing had to be solved */
  convergence: Convergence | null;
}
