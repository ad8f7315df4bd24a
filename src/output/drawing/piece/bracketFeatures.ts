import type { Piece, ShelfPiece } from '../../../core';
import type { Measure } from '../drawing';
import type { Lengths } from '../lengths';
import type { PieceEdgeDrawing, PieceFeature } from './drawing';

/** How far inside the edge a bracket's line is drawn, mm; the line itself is drawn on the panel. */
const INSIDE = 6;

/** The lines on the panels' faces that a shelf's brackets are held to, told beside the shelf's edge over them. */
export function bracketFeatures(
  piece: Piece | ShelfPiece,
  edges: readonly PieceEdgeDrawing[],
  { fine, plusMinus }: Lengths,
): PieceFeature[] {
  if (!('bracketLines' in piece)) return [];
  const level = (height: number): string =>
    `${fine(Math.abs(height)).text} ${height < 0 ? 'below' : 'above'} level line`;
  return piece.bracketLines.flatMap(({ wall, from, to, sd }): PieceFeature[] => {
    const edge = edges.find(({ name }) => name === (wall === 'back' ? 'back edge' : 'side edge'));
    const [first, last] = [edge?.path[0], edge?.path.at(-1)];
    if (!edge || !first || !last) return [];
    const long = Math.hypot(last[0] - first[0], last[1] - first[1]) || 1;
    const inward = edge.place === 'left' || edge.place === 'bottom' ? 1 : -1;
    const shift = edge.place === 'left' || edge.place === 'right' ? [inward * INSIDE, 0] : [0, inward * INSIDE];
    const along = (share: number): [number, number] => [
      first[0] + share * (last[0] - first[0]) + shift[0]!,
      first[1] + share * (last[1] - first[1]) + shift[1]!,
    ];
    const inset = Math.min(0.2, (2 * INSIDE) / long);
    const ends: Measure = plusMinus(sd);
    return [
      {
        at: along(0.62),
        line: [along(inset), along(1 - inset)],
        place: edge.place,
        lines: [
          `BRACKET LINE, ${wall} panel`,
          `corner: ${level(from[1])}`,
          `far end: ${level(to[1])} ${ends.text}`.trim(),
        ],
      },
    ];
  });
}
