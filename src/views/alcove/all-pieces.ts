import type { Piece, Result } from '../../core';

/** Every piece besides the panels, in the order in which they are listed. */
export const allPieces = ({ pieces }: Pick<Result, 'pieces'>): Piece[] => [
  ...pieces.trim,
  ...pieces.legs,
  ...pieces.shelves,
  ...pieces.fillers,
];
