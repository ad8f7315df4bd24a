export { edgeStretch } from './edgeStretch';
export { type Fold, fold, foldedOutline } from './fold';
export { foldPanel } from './foldPanel';
export { makePiece } from './makePiece';
export { endOfStrip, levelOverSquare, type Obstacle, offBack, offSide, overRimBy } from './obstacle';
export type {
  Angle,
  Body,
  Caution,
  Cover,
  Frame,
  Notch,
  Piece,
  PieceEdge,
  PieceEnd,
  PieceKind,
  PieceMark,
  PieceNote,
  Station,
} from './piece';
export { blankSize, counterClockwise } from './shape';
export { cross, dot, length, plus, unit, type Vec3 } from './vector';
export { levelStrip, uprightStrip, type WallStrip } from './wallStrip';
