import type { Piece, PieceKind, Point } from '../../../core';
import type { Measure, Place, View } from '../drawing';
import type { Rectangle } from '../rectangle';

export interface PieceMarkDrawing {
  /** counts through the whole piece */
  number: number;
  at: Point;
  /** from the piece's left end and from its lower end, as drawn */
  fromLeft: Measure;
  up: Measure;
  /** 95 % half-width across the edge */
  plusMinus: Measure;
  /** ± is too large to cut to the line */
  scribe: boolean;
  /** what is told at the mark, the distance across its edge first */
  lines: string[];
}

export interface PieceEdgeDrawing {
  name: string;
  /** `Left end` */
  title: string;
  place: Place;
  method: Piece['edges'][number]['method'];
  /** `mitre saw, butt`: the tool, and the joint of an end across a strip */
  methodWords: string;
  /** of an end across a strip: `1.2° ±0.1° in the face, upper edge longer`; none of other edges */
  angles: string[];
  /** from the first mark to the last one */
  path: Point[];
  marks: PieceMarkDrawing[];
  /** what to leave where ± is large; null where the edge can be cut to the line */
  leave: string | null;
}

/** A thing told of at a place: a notch, a tape, a line for a bracket. */
export interface PieceFeature {
  at: Point;
  line: [Point, Point] | null;
  place: Place;
  lines: string[];
}

/**
 * Template of a piece by meaning, free of any file format. Coordinates in mm as drawn: the piece's own flat ones seen
 * from its face, mirrored where the back is up.
 */
export interface PieceDrawing {
  id: string;
  kind: PieceKind;
  view: View;
  /** `Left side top` */
  title: string;
  /** which side is up, in words */
  statement: string;
  /** where it belongs: `On the left side panel, over its top edge.` */
  wallWords: string;
  /** of the face, counter-clockwise as seen from the face */
  outline: Point[];
  /** the same at the back; null where every cut is square through the thickness */
  back: Point[] | null;
  /** parts that stand out behind the back or in front of the face */
  lips: Point[][];
  /** -1 where the first flat axis is drawn to the left */
  sign: 1 | -1;
  axis: 'x' | 'y';
  /** edges that are cut */
  edges: PieceEdgeDrawing[];
  notches: PieceFeature[];
  tapes: PieceFeature[];
  brackets: PieceFeature[];
  /** `59 3/4" × 2 1/2", 1/4" thick, from trim` */
  sizeWords: string;
  /** in sentences, what the dimensions do not tell */
  notes: string[];
  cautions: Piece['cautions'];
  /** where the drawing is shortened, across the piece; none in a file */
  breaks: [Point, Point][];
  bounds: Rectangle;
}
