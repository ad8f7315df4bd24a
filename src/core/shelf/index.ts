export { LEAST_FALL, MOST_FALL } from './fitShelf';
export { fitShelves } from './fitShelves';
export type { BracketLine, ShelfPiece } from './shelf';
