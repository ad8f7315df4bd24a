export type { ControlLine } from './control-lines';
export type { CutStrip } from './cut-strips';
export {
  type Box,
  boxOf,
  type DrawnAlcove,
  type DrawnPanel,
  type DrawnPiece,
  drawnAlcove,
  type Layer,
  type PieceLayer,
} from './drawn-alcove';
export { exaggerated } from './exaggerate';
export { gridMesh, joinMeshes, type MeshData, type Vec3 } from './mesh-data';
export { isWithin, panelSolid } from './panel-solid';
export { pieceSolid } from './piece-solid';
export { type RimSolid, rimSolid } from './rim-solid';
export { surfaceThrough } from './sampled';
export { type AlcoveShape, alcoveShape } from './shape';
export { tracedLine, type WallPlace } from './traced-line';
export { intoRoom, onWall } from './wall-place';
