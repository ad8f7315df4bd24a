import { type Angle, type Piece, type PieceEdge, type PieceEnd, type PieceKind, Z_95 } from '../../../core';
import type { View } from '../drawing';
import { methodWords } from '../edgeWords';

export const pieceMethodWords: Record<PieceEdge['method'], string> = {
  ...methodWords,
  saw: 'mitre saw',
  none: "stock's own edge",
};

const stockWords: Record<Piece['stock'], string> = {
  trim: 'from trim',
  'angle-strip': 'from angle strip',
  sheet: 'from sheet',
  shelf: 'from shelf material',
};
export const cutFrom = ({ stock }: Piece): string => stockWords[stock];

export function pieceStatement(kind: PieceKind, view: View): string {
  if (kind === 'shelf') {
    return view === 'face'
      ? 'TOP UP: drawn as you look down on it, the back wall away from you'
      : 'UNDERSIDE UP (MIRRORED): drawn as you look at its underside, the back wall away from you';
  }
  return view === 'face'
    ? 'FACE UP: drawn as you look at its face, the way up it is fitted'
    : 'BACK UP (MIRRORED): drawn as you look at its back, the way up it is fitted, face down';
}

/** Where a piece belongs, as a sentence. */
export function placeWords({ kind, wall }: Pick<Piece, 'kind' | 'wall'>, id: string): string {
  const panel = wall === 'back' ? 'the back panel' : `the ${wall} side panel`;
  const side = id.includes('left') ? 'left' : 'right';
  const words: Record<PieceKind, string> = {
    top: `On ${panel}, over its top edge, from wall to wall.`,
    'side-top': `On ${panel}, over its top edge.`,
    vertical: `On ${panel}, down its front edge.`,
    angle: `In the ${side} inside corner; the flange drawn lies on the back panel, the other one on the ${side} side panel.`,
    leg: `Bedded on the ${wall} wall, beside the tub, in line with the panel above.`,
    filler: `Bedded on the ${wall} wall, hidden behind trim.`,
    shelf: `In the ${wall} inside corner, against the back panel and ${panel}.`,
  };
  return words[kind];
}

/** Angles of an end across a strip, a line each. */
export function angleLines({ mitre, bevel }: PieceEnd, axis: Piece['axis']): string[] {
  const edges: [string, string] = axis === 'x' ? ['upper edge', 'lower edge'] : ['front edge', 'rear edge'];
  return [angleWords('in the face', mitre, edges), angleWords('through it', bevel, ['back', 'face'])];
}

/** An angle less than this is cut square, degrees. */
const SQUARE_WITHIN = 0.05;

/** @param longer what is longer where the angle is positive, and where it is negative */
function angleWords(where: string, { degrees, sd }: Angle, longer: [string, string]): string {
  if (Math.abs(degrees) < SQUARE_WITHIN) return `square ${where}`;
  const half = Math.max(0.1, Math.ceil(Z_95 * sd * 10) / 10);
  return `${Math.abs(degrees).toFixed(1)}° ±${half.toFixed(1)}° ${where}, ${longer[degrees > 0 ? 0 : 1]} longer`;
}
