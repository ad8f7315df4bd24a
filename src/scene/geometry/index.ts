export type { ControlLine } from './control-lines';
export type { CutStrip } from './cut-strips';
export {
  type Box,
  type DrawnAlcove,
  type DrawnPanel,
  type DrawnPiece,
  drawnAlcove,
  type Layer,
  type PieceLayer,
} from './drawn-alcove';
export type { MeshData, Vec3 } from './mesh-data';
export { isWithin } from './panel-solid';
export { tracedLine, type WallPlace } from './traced-line';
