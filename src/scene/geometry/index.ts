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
export { gridMesh, type MeshData, type Vec3 } from './mesh-data';
export { isWithin } from './panel-solid';
export { type RimSolid, rimSolid } from './rim-solid';
export { spaced, surfaceThrough } from './sampled';
export { type AlcoveShape, alcoveShape } from './shape';
export { tracedLine, type WallPlace } from './traced-line';
export { onWall } from './wall-place';
