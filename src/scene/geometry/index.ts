export { type ControlLine, controlLines } from './control-lines';
export { type CutStrip, cutStrips } from './cut-strips';
export { exaggerated } from './exaggerate';
export type { MeshData, Vec3 } from './mesh-data';
export { isWithin, type PanelSolid, panelSolid } from './panel-solid';
export { rimSolid } from './rim-solid';
export { type AlcoveShape, alcoveShape } from './shape';
export { wallMesh } from './wall-mesh';
export { alongU, intoRoom, moved, onWall } from './wall-place';
