export type { PieceDrawing, PieceEdgeDrawing, PieceFeature, PieceMarkDrawing } from './drawing';
export { pieceDrawing } from './pieceDrawing';
export { type PieceShapesOptions, pieceGeometry, pieceShapes, pieceTemplateNotes } from './pieceShapes';
export { shortened } from './shortened';
