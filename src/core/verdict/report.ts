import type { EdgeName } from '../panel';
import type { Judgement } from './judge';

export type FigureName = 'plumb' | 'bow-up' | 'bow-across' | 'twist' | 'square' | 'level-along' | 'level-across';

/** A figure of a wall, corner or rim against its limit; lengths in mm. */
export interface JudgedFigure {
  figure: FigureName;
  /** signed as in the wall's, corner's or rim's own report; a slope or angle as its offset over `over` */
  value: number;
  sd: number;
  /** length that it is judged over */
  over: number;
  /** largest one permitted over that length */
  limit: number | null;
  judgement: Judgement;
}

/** How far a cut edge runs out of a plumb, or level, straight line: its marks' spread across it, mm. */
export interface EdgeRunOut {
  edge: EdgeName;
  value: number;
  sd: number;
  judgement: Judgement;
}

/** From best to worst: panels go on as cut square; edges are cut to the wall; the wall is made good first; neither yet. */
export type Verdict = 'fits' | 'scribe' | 'prepare' | 'hold';

export interface WallVerdict {
  verdict: Verdict;
  /** what it rests on, in sentences with figures in the job's unit, worst first */
  because: string[];
  figures: JudgedFigure[];
  runOuts: EdgeRunOut[];
  /** width of the panel at its top less that at its bottom, mm */
  taper: { value: number; sd: number };
}

export interface PlaceVerdict {
  verdict: Verdict;
  because: string[];
  figures: JudgedFigure[];
}
