import type { CutMethod, EdgeName, PanelName, Point } from '../../core';
import type { Leave } from './leaveExtra';
import type { Rectangle } from './rectangle';

/** Which side of the panel one looks at: its finished face, or its back (mirrored). */
export type View = 'face' | 'back';
/** Where a thing lies on the drawing. */
export type Place = 'left' | 'right' | 'bottom' | 'top';

/** A length with the words it is printed as. */
export interface Measure {
  mm: number;
  text: string;
}

export interface MarkDrawing {
  /** counts through the whole panel: bottom, top, then the two upright edges; factory edges have none */
  number: number;
  at: Point;
  /** distance to the control line along which the edge runs; `text` without words */
  across: Measure;
  /** 95 % half-width of `across` */
  plusMinus: Measure;
  /** distance to the other control line, along the edge */
  along: Measure;
  /** which way from that control line: `left`, `right`, `above`, `below`; empty where it is nought */
  direction: string;
  /** `29 1/2" left of plumb line` */
  acrossWords: string;
  /** `27 1/2" below level line` */
  alongWords: string;
  /** width of the strip to cut off; negative = the sheet falls short */
  sliver: Measure;
  sliverWords: string;
  /** ± is too large to cut to the line */
  scribe: boolean;
}

export interface EdgeDrawing {
  name: EdgeName;
  place: Place;
  /** `Back edge` */
  title: string;
  method: CutMethod;
  /** tool words: `knife: score and snap` */
  methodWords: string;
  /** which side is up for that tool and where the waste lies: `face up, waste to the left`; empty where nothing is cut */
  wasteWords: string;
  /** true edge, from bottom to top or from left to right as drawn */
  path: Point[];
  /** none where the factory edge is kept */
  marks: MarkDrawing[];
  /** `cut off 1/8" to 3/8"` */
  sliverWords: string;
  /** what to leave where ± is large; null where the edge can be cut to the line */
  leave: Leave | null;
}

/**
 * A strip between an edge and the sheet's side. `sliver`: to cut off; `offcut`: too wide to be a sliver; `gap`:
 * missing.
 */
export interface Strip {
  edge: EdgeName;
  kind: 'sliver' | 'offcut' | 'gap';
  polygon: Point[];
  widest: Measure;
}

export interface HoleDrawing {
  id: string;
  /** the id, with the kind of fixture where the id does not tell it */
  name: string;
  /** `valve` */
  kind: string;
  centre: Point;
  diameter: Measure;
  fromDatum: Measure;
  fromLevel: Measure;
  /** on which side of the control lines the centre lies */
  side: { across: 'left' | 'right'; up: 'above' | 'below' };
  /** 95 % half-widths */
  plusMinus: { across: Measure; up: Measure };
  /** from the cut edges of the panel, straight across and straight down; null where no edge is met */
  fromEdge: { title: string; distance: Measure } | null;
  fromBottom: Measure | null;
  aboveRim: Measure;
  aboveRimWords: string;
  from: Measure;
  fromWords: string;
  edgeDistance: Measure;
  /** `3 3/4" hole saw` */
  toolWords: string;
  /** advice as sentences, with their sources */
  advice: string[];
}

export interface ControlLine {
  line: [Point, Point];
  label: string;
  /** how to draw it on the sheet */
  setOut: string;
}

/**
 * A panel template by meaning, free of any file format. Coordinates in mm on the flat sheet as drawn: first axis to
 * the viewer's right, second up, origin where the level line crosses u = 0.
 */
export interface PanelDrawing {
  name: PanelName;
  view: View;
  /** `Right side panel (wet wall)` */
  title: string;
  /** which side is up, in words */
  statement: string;
  outline: Point[];
  /** -1 where the sheet's first axis is drawn to the left */
  sign: 1 | -1;
  sheet: Rectangle;
  /** `31 1/2" × 96"` */
  sheetWords: string;
  /** `29 7/8" × 66 1/4" overall, 1/4" thick` */
  sizeWords: string;
  strips: Strip[];
  /** arrow along the grain or pattern, and the words for it; null where there is none */
  grain: { arrow: [Point, Point]; words: string } | null;
  /** `keep the blade on the waste side …` */
  kerfWords: string;
  levelLine: ControlLine;
  plumbDatum: ControlLine;
  edges: EdgeDrawing[];
  holes: HoleDrawing[];
  /** what is wrong with this panel, in words */
  problems: string[];
  /** outline and what of the sheet lies near it */
  bounds: Rectangle;
}
